package jarwright.benchmark;

import jarwright.files.FoodTables;
import jarwright.page.PaperSize;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Pantry;
import jarwright.render.Printer;
import jarwright.render.WordBundle;
import jarwright.shelf.ShelfSheet;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.stream.IntStream;

/** {@code PrintInventory N FILE}: the shelf sheet of N jars. */
final class PrintInventory {
  private PrintInventory() {}

  public static void main(String[] args) throws IOException {
    Pantry pantry =
        Pantry.of(
            IntStream.range(0, Jars.lots(Integer.parseInt(args[0])))
                .mapToObj(lot -> new LedgerEvent(lot + 1L, Stock.arrival(lot)))
                .toList(),
            FoodTables::own);
    ShelfSheet sheet = new ShelfSheet(WordBundle.load("en"), LotFacts::name);
    OffsetDateTime now = OffsetDateTime.parse("2026-08-24T18:30:00Z");
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(Path.of(args[1])))) {
      new Printer(Optional.empty())
          .pdf(sheet.of(pantry.jars(), "Fernhollow cannery", now, PaperSize.LETTER), out);
    }
  }
}
