package jarwright.files;

import jarwright.pantry.FoodYear;
import jarwright.pantry.YearBook;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** A year's book for other programs, a row for each food and size of jar. */
public final class YearListing {
  private static final List<String> COLUMNS =
      List.of(
          "year",
          "as-of",
          "product",
          "size",
          "before",
          "put-up",
          "eaten",
          "lost",
          "lost-why",
          "canned-again",
          "stock",
          "in-doubt",
          "to-throw-away",
          "stock-keeping",
          "pace-jars",
          "pace-days",
          "weeks-left",
          "put-up-next-year");
  private static final Set<String> NUMBERS =
      Set.of(
          "year",
          "before",
          "put-up",
          "eaten",
          "lost",
          "canned-again",
          "stock",
          "in-doubt",
          "to-throw-away",
          "stock-keeping",
          "pace-jars",
          "pace-days",
          "weeks-left",
          "put-up-next-year");

  private YearListing() {}

  /** A table; where too little is recorded, what hangs on the pace is empty. */
  public static String csv(YearBook book) throws IOException {
    return listing(book).csv(Cell::out);
  }

  /** A list of objects with the same names; what is empty is left out. */
  public static String json(YearBook book) throws IOException {
    return listing(book).json();
  }

  private static Listing listing(YearBook book) {
    return new Listing(COLUMNS, NUMBERS, book.foods().stream().map(f -> cells(book, f)).toList());
  }

  private static List<String> cells(YearBook book, FoodYear food) {
    List<String> why = new ArrayList<>();
    food.lost().forEach((reason, jars) -> why.add(jars + " " + reason));
    return List.of(
        String.valueOf(book.year()),
        book.asOf().toString(),
        food.facts().shownName(),
        food.facts().jar(),
        String.valueOf(food.before()),
        String.valueOf(food.putUp()),
        String.valueOf(food.eaten()),
        String.valueOf(food.lostInAll()),
        String.join("; ", why).strip(),
        String.valueOf(food.recanned()),
        String.valueOf(food.stock()),
        String.valueOf(food.doubtful()),
        String.valueOf(food.toThrowAway()),
        String.valueOf(food.keeping()),
        food.pace().map(p -> String.valueOf(p.eaten())).orElse(""),
        food.pace().map(p -> String.valueOf(p.days())).orElse(""),
        text(food.weeks()),
        text(food.toPutUp()));
  }

  private static String text(OptionalInt number) {
    return number.isPresent() ? String.valueOf(number.getAsInt()) : "";
  }
}
