package jarwright.cli;

import jarwright.files.FoodTables;
import jarwright.files.YearListing;
import jarwright.pantry.YearBook;
import jarwright.plan.Kitchen;
import jarwright.problem.Refused;
import jarwright.shelf.YearSheet;
import java.io.IOException;
import java.util.Optional;

/** The book of a year, shown, listed or printed. */
final class ShelfYear {
  private ShelfYear() {}

  static void show(Call call, Books books, String format) throws Usage, Refused, IOException {
    int year = year(call, books);
    YearBook book;
    try {
      book = YearBook.of(books.events(), year, books.now(), FoodTables::own);
    } catch (IllegalArgumentException e) {
      throw new Usage("--year " + year + ": " + e.getMessage());
    }
    if (call.has(ShelfCommand.OUT)) {
      SheetOptions options = new SheetOptions(call, books.kitchen());
      ProductNames names = new ProductNames(options.words().language());
      String household = books.kitchen().map(Kitchen::household).orElse("");
      ShelfCommand.write(
          call, new YearSheet(options.words(), names::of).of(book, household, options.paper()));
      return;
    }
    switch (format) {
      case "csv" -> call.out().print(YearListing.csv(book));
      case "json" -> call.out().print(YearListing.json(book));
      default -> call.out().print(YearText.of(book));
    }
  }

  private static int year(Call call, Books books) throws Usage {
    Optional<String> typed = call.value(ShelfCommand.YEAR);
    if (typed.isEmpty()) {
      return books.now().getYear();
    }
    if (!typed.get().matches("\\d{4}")) {
      throw new Usage("--year takes a year like 2026, not " + NamedJars.shown(typed.get()));
    }
    return Integer.parseInt(typed.get());
  }
}
