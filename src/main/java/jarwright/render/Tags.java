package jarwright.render;

import com.lowagie.text.ExceptionConverter;
import com.lowagie.text.pdf.ByteBuffer;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfIndirectReference;
import com.lowagie.text.pdf.PdfLiteral;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfStructureTreeRoot;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * The structure tree, which tells a program that reads the page aloud what is a heading, a list, a
 * cell. Everything drawn is either the content of one element or an artifact (ISO 14289-1, 7.1). An
 * element is written as soon as all of it is drawn, so that a long document takes no more memory
 * than a short one.
 */
final class Tags {
  private static final PdfName ARTIFACT = new PdfName("Artifact");

  private final PdfWriter writer;
  private final Tag document;
  private final List<Tag> open = new ArrayList<>();
  private final StringBuilder pages = new StringBuilder("<</Nums[");
  private Tag parent;
  private boolean marked;

  /** The page's number from 0, its object, and whose its marked stretches are. */
  private int page;

  private int pageObject;
  private int[] owners = new int[64];
  private int marks;

  /** Tags of a document whose first page is open. */
  Tags(PdfWriter writer) {
    this.writer = writer;
    int root = writer.getStructureTreeRoot().getReference().getNumber();
    document = new Tag(number(), root, "Document");
    parent = document;
    begin();
  }

  private int number() {
    return writer.getPdfIndirectReference().getNumber();
  }

  private void begin() {
    page = writer.getCurrentPageNumber() - 1;
    pageObject = writer.getCurrentPage().getNumber();
    marks = 0;
  }

  /** Goes on to the page that was just begun. */
  void turn() {
    endPage();
    begin();
  }

  private void endPage() {
    ByteBuffer list = new ByteBuffer(12 * marks + 8);
    Tag.references(list, owners, marks);
    PdfIndirectReference written = add(new PdfLiteral(PdfObject.ARRAY, list.toByteArray()));
    pages.append(page).append(' ').append(written).append(' ');
  }

  /** Writes what is still open; nothing may be drawn afterwards. */
  void end() {
    endPage();
    open.forEach(this::write);
    write(document);
    pages.append("]>>");
    PdfStructureTreeRoot root = writer.getStructureTreeRoot();
    root.put(PdfName.K, new PdfLiteral(document.number() + " 0 R"));
    root.put(PdfName.PARENTTREE, add(new PdfLiteral(PdfObject.DICTIONARY, pages.toString())));
  }

  private PdfIndirectReference add(PdfObject object) {
    try {
      return writer.addToBody(object).getIndirectReference();
    } catch (IOException e) {
      throw new ExceptionConverter(e);
    }
  }

  private void write(Tag tag) {
    try {
      writer.addToBody(tag.written(), tag.number());
    } catch (IOException e) {
      throw new ExceptionConverter(e);
    }
  }

  private Tag begin(String role) {
    Tag tag = new Tag(number(), parent.number(), role);
    parent.add(tag.number());
    return tag;
  }

  private void draw(Tag tag, Runnable paint) {
    Tag outer = parent;
    parent = tag;
    paint.run();
    parent = outer;
  }

  /** Runs {@code paint} with its elements under a new grouping element. */
  void inside(String role, Runnable paint) {
    inside(role, tag -> {}, paint);
  }

  /** The same, with the attributes that {@code dress} sets. */
  void inside(String role, Consumer<Tag> dress, Runnable paint) {
    if (marked) {
      paint.run();
      return;
    }
    Tag tag = begin(role);
    dress.accept(tag);
    draw(tag, paint);
    write(tag);
  }

  /** A grouping element made when the first of its parts is drawn, as a table by its rows. */
  static final class Later {
    private final String role;
    private final Consumer<Tag> dress;
    private Tag made;

    Later(String role, Consumer<Tag> dress) {
      this.role = role;
      this.dress = dress;
    }
  }

  /** Runs {@code paint} with its elements under the group, which is made if it is not yet there. */
  void inside(Later later, Runnable paint) {
    if (marked) {
      paint.run();
      return;
    }
    if (later.made == null) {
      later.made = begin(later.role);
      later.dress.accept(later.made);
      open.add(later.made);
    }
    draw(later.made, paint);
  }

  /** Draws the content of a new element. */
  void content(String role, PdfContentByte to, Runnable paint) {
    content(role, tag -> {}, to, paint);
  }

  /** The same, with the attributes that {@code dress} sets. */
  void content(String role, Consumer<Tag> dress, PdfContentByte to, Runnable paint) {
    if (marked) {
      paint.run();
      return;
    }
    Tag tag = begin(role);
    dress.accept(tag);
    tag.mark(pageObject, marks);
    to.setLiteral("/" + role + " <</MCID " + marks + ">> BDC\n");
    if (marks == owners.length) {
      owners = Arrays.copyOf(owners, 2 * marks);
    }
    owners[marks++] = tag.number();
    marked = true;
    paint.run();
    marked = false;
    to.setLiteral("EMC\n");
    write(tag);
  }

  /** Draws what is not to be read aloud: frames, rules, what repeats on each page. */
  void artifact(PdfContentByte to, Runnable paint) {
    if (marked) {
      paint.run();
      return;
    }
    marked = true;
    to.beginMarkedContentSequence(ARTIFACT);
    paint.run();
    to.endMarkedContentSequence();
    marked = false;
  }

  /** Runs {@code paint} on a form that is an artifact as a whole, so nothing in it is tagged. */
  void untagged(Runnable paint) {
    boolean outer = marked;
    marked = true;
    paint.run();
    marked = outer;
  }

  /** A picture with its words and its place on the page, in points from the lower left. */
  void figure(String alt, Supplier<float[]> box, PdfContentByte to, Runnable paint) {
    content(
        "Figure",
        figure -> {
          figure.alt(alt);
          figure.bounds(box.get());
        },
        to,
        paint);
  }
}
