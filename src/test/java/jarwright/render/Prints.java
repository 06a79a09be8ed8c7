package jarwright.render;

import jarwright.page.PaperSize;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Prints markup written in a test, and reads it back. */
final class Prints {
  static final Path TEMPLATES = Path.of("src", "test", "resources", "templates");
  static final Wording WORDS = Wording.of(Locale.ENGLISH, Map.of("hello", "Hello {name}"));

  private Prints() {}

  static Sheet sheet(String template, Map<String, Object> view, PaperSize paper) {
    Sheet.About about =
        new Sheet.About(
            "A test & its title", "Jars", List.of("jar", "lot"), LocalDate.of(2026, 8, 24));
    return new Sheet(template, view, paper, WORDS, about);
  }

  /** The PDF of a template given as text. */
  static byte[] pdf(String template, Map<String, Object> view, PaperSize paper) {
    try {
      Path folder = Files.createTempDirectory("templates");
      Path file = folder.resolve("t.ftl");
      try {
        Files.writeString(file, template);
        return pdf(folder, "t.ftl", view, paper);
      } finally {
        Files.delete(file);
        Files.delete(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static byte[] pdf(String template) {
    return pdf(template, Map.of(), PaperSize.LETTER);
  }

  /** The PDF of a sheet of one section with that body. */
  static byte[] body(String body) {
    return pdf("<sheet><section><body>" + body + "</body></section></sheet>");
  }

  static byte[] pdf(Path folder, String template, Map<String, Object> view, PaperSize paper) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      new Printer(Optional.of(folder)).pdf(sheet(template, view, paper), out);
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

  /** The words of each page, in reading order, one line per line. */
  static List<String> pages(byte[] pdf) {
    try (PDDocument document = read(pdf)) {
      List<String> pages = new java.util.ArrayList<>();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setLineSeparator("\n");
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(stripper.getText(document).strip());
      }
      return pages;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
