package jarwright.checklist;

import jarwright.batch.Batch;
import jarwright.day.PlannedBatch;
import jarwright.day.SectionTimes;
import jarwright.files.NameTables;
import jarwright.page.PaperSize;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import jarwright.problem.Refused;
import jarwright.render.Printer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Prints checklists and reads them back with another library. */
final class Printed {
  private static final Printer PRINTER = new Printer(Optional.empty());

  private Printed() {}

  static Map<String, Object> view(PlannedBatch planned) {
    Batch batch = planned.batch();
    return new BatchView(batch, batch.product().name(), PlannedBatch.WORDS, english -> english)
        .with(planned.sections());
  }

  /** The view in another language, as a kit prints it. */
  static Map<String, Object> view(PlannedBatch planned, Wording words) {
    Batch batch = planned.batch();
    try {
      String name = NameTables.products(words.language()).get(batch.product().id());
      Map<String, String> ingredients = NameTables.ingredients(words.language());
      return new BatchView(
              batch,
              name == null ? batch.product().name() : name,
              words,
              english -> ingredients.getOrDefault(english, english))
          .with(planned.sections(words));
    } catch (IOException | Refused e) {
      throw new AssertionError(e);
    }
  }

  static byte[] pdf(PaperSize paper, boolean large, PlannedBatch... batches) {
    return pdf(paper, large, Stream.of(batches).map(Printed::view).toList());
  }

  static byte[] pdf(PlannedBatch batch) {
    return pdf(PaperSize.LETTER, false, batch);
  }

  /** A sheet that is used once, with the clock times that a day gives its sections. */
  static byte[] dated(PlannedBatch planned, SectionTimes times) {
    Batch batch = planned.batch();
    Map<String, Object> view =
        new BatchView(batch, batch.product().name(), PlannedBatch.WORDS, english -> english)
            .dated(times)
            .with(planned.sections());
    return pdf(PaperSize.LETTER, false, List.of(view));
  }

  private static byte[] pdf(PaperSize paper, boolean large, List<Map<String, Object>> views) {
    return pdf(paper, large, views, PlannedBatch.WORDS);
  }

  static byte[] pdf(
      PaperSize paper, boolean large, List<Map<String, Object>> views, Wording words) {
    Sheet sheet = ChecklistSheet.of(views, paper, words, PlannedBatch.DAY, large);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      PRINTER.pdf(sheet, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  static PDDocument read(byte[] pdf) {
    try {
      return Loader.loadPDF(pdf);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The words of each side, with every stretch of white space as one space. */
  static List<String> sides(byte[] pdf) {
    try (PDDocument document = read(pdf)) {
      List<String> sides = new ArrayList<>();
      PDFTextStripper stripper = new PDFTextStripper();
      for (int side = 1; side <= document.getNumberOfPages(); side++) {
        stripper.setStartPage(side);
        stripper.setEndPage(side);
        sides.add(stripper.getText(document).replaceAll("\\s+", " "));
      }
      return sides;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String words(byte[] pdf) {
    return String.join(" ", sides(pdf));
  }
}
