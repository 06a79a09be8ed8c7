package jarwright.cli;

import jarwright.pantry.FoodYear;
import jarwright.pantry.Pace;
import jarwright.pantry.YearBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/** A year's book for a terminal. */
final class YearText {
  static final String RULE =
      "Before: jars of earlier years that were left. Doubt: to be looked over, re-canned or vouched"
          + " for before they are eaten. Throw: to be thrown away. Before and put up are together"
          + " what was eaten, lost, re-canned, and what is in stock, in doubt and to throw away."
          + " Pace: jars eaten over the days since there was some of it on the ledger, of the last "
          + Pace.YEAR
          + " at most. Weeks left: sound jars in stock at that pace. To put up next year: the jars"
          + " eaten in a year at that pace, rounded up, less the jars in stock whose use-by date"
          + " lies in a later year. Fewer than "
          + Pace.LEAST_JARS
          + " jars eaten or "
          + Pace.LEAST_DAYS
          + " days are too little to tell.";

  private YearText() {}

  static String of(YearBook book) {
    StringBuilder out = new StringBuilder();
    out.append("The year ").append(book.year()).append(", as of ").append(book.asOf());
    out.append("\n\n");
    if (book.foods().isEmpty()) {
      return out.append("Nothing was put up, eaten or in stock.\n").toString();
    }
    out.append(
        row(
            "",
            "before",
            "put up",
            "eaten",
            "lost",
            "stock",
            "doubt",
            "throw",
            "weeks",
            "next year"));
    for (FoodYear food : book.foods()) {
      out.append(
          row(
              JarText.food(food.facts()),
              String.valueOf(food.before()),
              String.valueOf(food.putUp()),
              String.valueOf(food.eaten()),
              String.valueOf(food.lostInAll()),
              String.valueOf(food.stock()),
              String.valueOf(food.doubtful()),
              String.valueOf(food.toThrowAway()),
              shown(food.weeks()),
              shown(food.toPutUp())));
      if (food.lostInAll() + food.recanned() > 0) {
        out.append("    ").append(lost(food)).append('\n');
      }
    }
    if (book.unrecorded() > 0) {
      out.append('\n').append(ShelfText.jars(book.unrecorded()));
      out.append(" planned, results not recorded: jarwright seal LOT, or jarwright cancel LOT\n");
    }
    boolean tooLittle = book.foods().stream().anyMatch(f -> f.pace().isEmpty());
    if (tooLittle) {
      out.append("\n? too little is recorded to tell\n");
    }
    return out.append('\n').append(Indented.of("", "", RULE)).toString();
  }

  private static String row(String food, String... figures) {
    Object[] cells = new Object[figures.length + 1];
    cells[0] = food;
    System.arraycopy(figures, 0, cells, 1, figures.length);
    return String.format(Locale.ROOT, "%-34s %6s %6s %6s %6s %6s %6s %6s %6s %9s", cells)
            .stripTrailing()
        + "\n";
  }

  private static String shown(OptionalInt number) {
    return number.isPresent() ? String.valueOf(number.getAsInt()) : "?";
  }

  private static String lost(FoodYear food) {
    List<String> parts = new ArrayList<>();
    food.lost()
        .forEach((why, jars) -> parts.add(jars + " " + (why.isEmpty() ? "no reason said" : why)));
    if (food.recanned() > 0) {
      parts.add(food.recanned() + " re-canned");
    }
    return String.join("; ", parts);
  }
}
