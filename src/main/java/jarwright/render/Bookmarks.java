package jarwright.render;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfOutline;
import java.util.ArrayList;
import java.util.List;

/** The outline beside the document: one entry per heading, nested by level. */
final class Bookmarks {
  private final List<PdfOutline> open = new ArrayList<>();

  Bookmarks(PdfContentByte content) {
    open.add(content.getRootOutline());
  }

  /** Whether a heading of that level may come next: a level may not be skipped on the way down. */
  boolean mayFollow(int level) {
    return level <= open.size();
  }

  /** Adds an entry that leads to {@code height} (pt from the foot) of the current page. */
  void add(int level, String title, double height) {
    while (open.size() > level) {
      open.remove(open.size() - 1);
    }
    PdfOutline parent = open.get(open.size() - 1);
    PdfDestination to = new PdfDestination(PdfDestination.FITH, (float) height);
    open.add(new PdfOutline(parent, to, title));
  }
}
