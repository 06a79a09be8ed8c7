package jarwright.render;

import com.lowagie.text.ExceptionConverter;
import com.lowagie.text.pdf.LongPdfWriter;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfDocument;
import com.lowagie.text.pdf.PdfEncryption;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfStream;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import jarwright.page.Sheet;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * A PDF file that is PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2) at once: tagged, titled, its
 * colours defined, and the same bytes for the same sheet.
 */
final class PdfFile {
  private PdfFile() {}

  /**
   * Writes the file.
   *
   * @param identifier the file's own, known once it is drawn
   * @param draw draws the sides
   */
  static void write(
      Sheet sheet, OutputStream out, Supplier<byte[]> identifier, Consumer<Pages> draw)
      throws IOException {
    try {
      Undated document = new Undated();
      PdfWriter writer = new LongPdfWriter(document, out);
      document.addWriter(writer);
      writer.setCloseStream(false);
      writer.setXmpMetadata(Xmp.packet(sheet.about(), sheet.words().language()));
      describe(writer, sheet);
      Pages pages = new Pages(document, writer, sheet.paper());
      draw.accept(pages);
      pages.end();
      byte[] id = identifier.get();
      writer.getInfo().put(PdfName.FILEID, PdfEncryption.createInfoId(id, id));
      colours(writer);
      document.close();
    } catch (ExceptionConverter e) {
      if (e.getException() instanceof IOException io) {
        throw io;
      }
      throw e;
    }
  }

  /** The library's document asks the clock, the time zone and the locale for a date; not this. */
  private static final class Undated extends PdfDocument {
    @Override
    public boolean addCreationDate() {
      return true;
    }
  }

  private static void describe(PdfWriter writer, Sheet sheet) {
    Sheet.About about = sheet.about();
    PdfDictionary info = writer.getInfo();
    info.put(PdfName.TITLE, text(about.title()));
    if (!about.subject().isEmpty()) {
      info.put(PdfName.SUBJECT, text(about.subject()));
    }
    if (!about.keywords().isEmpty()) {
      info.put(PdfName.KEYWORDS, text(String.join(", ", about.keywords())));
    }
    info.put(PdfName.PRODUCER, text(Xmp.PRODUCER));
    info.put(PdfName.CREATIONDATE, new PdfString(Xmp.pdfDate(about.created())));
    info.put(PdfName.MODDATE, new PdfString(Xmp.pdfDate(about.created())));
    PdfDictionary catalog = writer.getExtraCatalog();
    catalog.put(PdfName.LANG, new PdfString(sheet.words().language()));
    writer.addViewerPreference(PdfName.DISPLAYDOCTITLE, PdfBoolean.PDFTRUE);
  }

  private static PdfString text(String text) {
    return new PdfString(text, PdfObject.TEXT_UNICODE);
  }

  /** The output intent: what the device colours of this file mean. */
  private static void colours(PdfWriter writer) throws IOException {
    try (InputStream in = PdfFile.class.getResourceAsStream("srgb.icc")) {
      PdfStream profile = new PdfStream(in.readAllBytes());
      profile.put(PdfName.N, new PdfNumber(3));
      profile.flateCompress();
      PdfDictionary intent = new PdfDictionary(PdfName.OUTPUTINTENT);
      intent.put(PdfName.S, PdfName.GTS_PDFA1);
      intent.put(PdfName.OUTPUTCONDITIONIDENTIFIER, new PdfString("sRGB IEC61966-2.1"));
      intent.put(PdfName.INFO, new PdfString("sRGB IEC61966-2.1"));
      intent.put(PdfName.DESTOUTPUTPROFILE, writer.addToBody(profile).getIndirectReference());
      writer.getExtraCatalog().put(PdfName.OUTPUTINTENTS, new PdfArray(intent));
    }
  }
}
