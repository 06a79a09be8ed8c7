package jarwright.render;

import com.lowagie.text.ExceptionConverter;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * The structure tree, which tells a program that reads the page aloud what is a heading, a list, a
 * cell. Everything drawn is either the content of one element or an artifact (ISO 14289-1, 7.1).
 */
final class Tags {
  private static final PdfName ARTIFACT = new PdfName("Artifact");
  private static final PdfName OWNER = PdfName.O;

  private final PdfWriter writer;
  private PdfStructureElement parent;
  private boolean marked;

  Tags(PdfWriter writer) {
    this.writer = writer;
    this.parent = new PdfStructureElement(writer.getStructureTreeRoot(), new PdfName("Document"));
  }

  /** A grouping element under the current one, to be filled by {@link #inside}. */
  PdfStructureElement group(String role) {
    return new PdfStructureElement(parent, new PdfName(role));
  }

  /** Runs {@code paint} with its elements under {@code group}. */
  void inside(PdfStructureElement group, Runnable paint) {
    if (marked) {
      paint.run();
      return;
    }
    PdfStructureElement outer = parent;
    parent = group;
    paint.run();
    parent = outer;
  }

  /** Runs {@code paint} with its elements under a new grouping element. */
  void inside(String role, Runnable paint) {
    if (marked) {
      paint.run();
    } else {
      inside(group(role), paint);
    }
  }

  /**
   * Runs {@code paint} with its elements under a new grouping element to which nothing comes later:
   * all of it is written at once, so that a long document takes no more memory than a short one.
   */
  void whole(String role, Runnable paint) {
    if (marked) {
      paint.run();
      return;
    }
    PdfStructureElement group = group(role);
    inside(group, paint);
    try {
      write(group);
    } catch (IOException e) {
      throw new ExceptionConverter(e);
    }
    PdfArray among = (PdfArray) parent.get(PdfName.K);
    among.set(among.size() - 1, group.getReference());
  }

  private void write(PdfStructureElement element) throws IOException {
    if (element.get(PdfName.K) instanceof PdfArray parts) {
      for (int i = 0; i < parts.size(); i++) {
        if (parts.getElements().get(i) instanceof PdfStructureElement part) {
          write(part);
          parts.set(i, part.getReference());
        }
      }
    }
    writer.addToBody(element, element.getReference());
  }

  /** A grouping element made when the first of its parts is drawn, as a table by its rows. */
  static final class Later {
    private final String role;
    private final Consumer<PdfStructureElement> dress;
    private PdfStructureElement made;

    Later(String role, Consumer<PdfStructureElement> dress) {
      this.role = role;
      this.dress = dress;
    }
  }

  /** Runs {@code paint} with its elements under the group, which is made if it is not yet there. */
  void inside(Later later, Runnable paint) {
    if (!marked && later.made == null) {
      later.made = group(later.role);
      later.dress.accept(later.made);
    }
    inside(later.made, paint);
  }

  /** Whether what is drawn now is part of an artifact or of an element already open. */
  boolean isMarked() {
    return marked;
  }

  /** Draws the content of a new element. */
  void content(String role, PdfContentByte to, Runnable paint) {
    if (marked) {
      paint.run();
    } else {
      content(group(role), to, paint);
    }
  }

  /** Draws (more) content of an element; an element with elements in it cannot have any. */
  void content(PdfStructureElement element, PdfContentByte to, Runnable paint) {
    if (marked) {
      paint.run();
      return;
    }
    marked = true;
    to.beginMarkedContentSequence(element);
    paint.run();
    to.endMarkedContentSequence();
    marked = false;
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
    if (marked) {
      paint.run();
      return;
    }
    PdfStructureElement figure = group("Figure");
    figure.put(PdfName.ALT, new PdfString(alt, PdfObject.TEXT_UNICODE));
    PdfDictionary layout = attributes(figure, "Layout");
    PdfArray bounds = new PdfArray();
    for (float side : box.get()) {
      bounds.add(new PdfNumber(side));
    }
    layout.put(PdfName.BBOX, bounds);
    layout.put(new PdfName("Placement"), new PdfName("Block"));
    content(figure, to, paint);
  }

  /** The scope of a heading cell: {@code Column} or {@code Row}. */
  static void scope(PdfStructureElement cell, String scope) {
    attributes(cell, "Table").put(new PdfName("Scope"), new PdfName(scope));
  }

  static void span(PdfStructureElement cell, int columns) {
    if (columns > 1) {
      attributes(cell, "Table").put(new PdfName("ColSpan"), new PdfNumber(columns));
    }
  }

  /** How the items of a list are told apart: {@code None}, {@code Decimal}. */
  static void numbering(PdfStructureElement list, String kind) {
    attributes(list, "List").put(new PdfName("ListNumbering"), new PdfName(kind));
  }

  private static PdfDictionary attributes(PdfStructureElement element, String owner) {
    PdfObject there = element.get(PdfName.A);
    if (there instanceof PdfDictionary dictionary) {
      return dictionary;
    }
    PdfDictionary made = new PdfDictionary();
    made.put(OWNER, new PdfName(owner));
    element.put(PdfName.A, made);
    return made;
  }
}
