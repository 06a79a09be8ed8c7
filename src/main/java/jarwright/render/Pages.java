package jarwright.render;

import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import jarwright.page.PaperSize;

/** The sides of a document, begun one after the other. */
final class Pages {
  private final Document document;
  private final PdfWriter writer;
  private final PaperSize paper;
  private Tags tags;
  private Bookmarks bookmarks;
  private int count;
  private Side current;

  Pages(Document document, PdfWriter writer, PaperSize paper) {
    this.document = document;
    this.writer = writer;
    this.paper = paper;
  }

  /** How many sides there are so far. */
  int count() {
    return count;
  }

  PaperSize paper() {
    return paper;
  }

  double width(boolean turned) {
    return Units.pt(turned ? paper.height() : paper.width());
  }

  double height(boolean turned) {
    return Units.pt(turned ? paper.width() : paper.height());
  }

  /** Begins the next side, upright or turned on its long edge. */
  Side begin(boolean turned) {
    document.setPageSize(new Rectangle((float) width(turned), (float) height(turned)));
    if (document.isOpen()) {
      document.newPage();
      tags.turn();
    } else {
      document.open();
      tags = new Tags(writer);
      bookmarks = new Bookmarks(writer.getDirectContent());
    }
    writer.setPageEmpty(false);
    count++;
    Pen pen = new Pen(writer.getDirectContent(), height(turned));
    current = new Side(pen, tags, PageCount.UNKNOWN, bookmarks, height(turned));
    return current;
  }

  /** Ends the last side and with it the tags. */
  void end() {
    if (tags != null) {
      tags.end();
    }
  }

  /** Puts an empty form over the current side, to be filled later. */
  PdfTemplate addForm(boolean turned) {
    PdfTemplate form =
        writer.getDirectContent().createTemplate((float) width(turned), (float) height(turned));
    current.artifact(() -> writer.getDirectContent().addTemplate(form, 0, 0));
    return form;
  }

  /** The side that draws on a form. */
  Side onForm(PdfTemplate form, boolean turned, PageCount number) {
    Pen pen = new Pen(form, height(turned));
    return new Side(pen, tags, number, bookmarks, height(turned));
  }
}
