package jarwright.render;

import jarwright.page.Sheet;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;

/**
 * Prints sheets. What it needs — templates, typeface, hyphenation — is read when first used and
 * then kept, so one printer serves a whole run. Not for use by several threads at once.
 */
public final class Printer {
  private final Templates templates;
  private final Typeface typeface = new Typeface();
  private Hyphens hyphens = new Hyphens(Locale.ROOT);

  /**
   * A printer.
   *
   * @param ownTemplates a folder whose templates go before those of the same name in the jar
   */
  public Printer(Optional<Path> ownTemplates) {
    this(ownTemplates, FillRun.PATIENCE);
  }

  /** The same with another patience, for those who cannot wait. */
  Printer(Optional<Path> ownTemplates, Duration patience) {
    this.templates = new Templates(ownTemplates, patience);
  }

  /**
   * Writes the sheet as a PDF, tagged and archivable (PDF/UA-1, PDF/A-2a); the same sheet gives the
   * same bytes. The stream is left open. After a fault what was written is to be thrown away.
   *
   * @throws jarwright.page.PrintFault if the template is wrong, something has no room, or a
   *     character no glyph
   * @throws IOException if the stream fails
   */
  public void pdf(Sheet sheet, OutputStream out) throws IOException {
    if (sheet.isHtml()) {
      throw new IllegalArgumentException(sheet.template() + " is a web page, not a PDF");
    }
    if (!hyphens.locale().equals(sheet.words().locale())) {
      hyphens = new Hyphens(sheet.words().locale());
    }
    try (Source source = new Source(templates, sheet)) {
      PdfFile.write(
          sheet,
          out,
          source::identifier,
          pages -> SheetPainter.paint(source, typeface, hyphens, pages));
    }
  }

  /**
   * The sheet as a web page in UTF-8.
   *
   * @throws jarwright.page.TemplateFault if the template is wrong
   */
  public byte[] html(Sheet sheet) {
    if (!sheet.isHtml()) {
      throw new IllegalArgumentException(sheet.template() + " is a PDF, not a web page");
    }
    StringWriter out = new StringWriter(8192);
    templates.fill(sheet, out);
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }
}
