package jarwright.render;

import com.lowagie.text.pdf.ByteBuffer;
import com.lowagie.text.pdf.PdfLiteral;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import java.io.IOException;
import java.util.Arrays;

/**
 * An element of the structure tree until it is written (ISO 32000-1, 14.7.2): it holds other
 * elements, by their object numbers, or one stretch of a page.
 */
final class Tag {
  private final int number;
  private final int parent;
  private final String role;
  private int[] parts = new int[4];
  private int count;
  private int page;
  private int mark;
  private String alt = "";
  private String owner = "";
  private final StringBuilder attributes = new StringBuilder();

  Tag(int number, int parent, String role) {
    this.number = number;
    this.parent = parent;
    this.role = role;
  }

  int number() {
    return number;
  }

  /** Adds an element at its end. */
  void add(int part) {
    if (page > 0) {
      throw new IllegalStateException(role + " has content of its own");
    }
    if (count == parts.length) {
      parts = Arrays.copyOf(parts, 2 * count);
    }
    parts[count++] = part;
  }

  /** Makes marked stretch {@code mark} of the page, an object number, its content. */
  void mark(int page, int mark) {
    if (count > 0 || this.page > 0) {
      throw new IllegalStateException(role + " has content already");
    }
    this.page = page;
    this.mark = mark;
  }

  void alt(String words) {
    alt = words;
  }

  /** Where a picture stands on the page: left, lower, right, upper in pt. */
  void bounds(float[] box) {
    StringBuilder numbers = new StringBuilder("[");
    for (float side : box) {
      numbers.append(ByteBuffer.formatDouble(side)).append(' ');
    }
    attribute("Layout", "BBox", numbers.append(']').toString());
    attribute("Layout", "Placement", "/Block");
  }

  /** The scope of a heading cell: {@code Column} or {@code Row}. */
  void scope(String scope) {
    attribute("Table", "Scope", "/" + scope);
  }

  void span(int columns) {
    if (columns > 1) {
      attribute("Table", "ColSpan", String.valueOf(columns));
    }
  }

  /** How the items of a list are told apart: {@code None}, {@code Decimal}. */
  void numbering(String kind) {
    attribute("List", "ListNumbering", "/" + kind);
  }

  private void attribute(String owner, String name, String value) {
    if (!this.owner.isEmpty() && !this.owner.equals(owner)) {
      throw new IllegalStateException(role + " has attributes of " + this.owner);
    }
    this.owner = owner;
    attributes.append('/').append(name).append(' ').append(value);
  }

  /** The dictionary. */
  PdfObject written() throws IOException {
    ByteBuffer out = new ByteBuffer(96);
    out.append("<</S/").append(role).append("/P ").append(parent).append(" 0 R");
    if (page > 0) {
      out.append("/Pg ").append(page).append(" 0 R/K ").append(mark);
    } else if (count > 0) {
      out.append("/K");
      references(out, parts, count);
    }
    if (!alt.isEmpty()) {
      out.append("/Alt");
      new PdfString(alt, PdfObject.TEXT_UNICODE).toPdf(null, out);
    }
    if (!owner.isEmpty()) {
      out.append("/A<</O/").append(owner).append(attributes.toString()).append(">>");
    }
    out.append(">>");
    return new PdfLiteral(PdfObject.DICTIONARY, out.toByteArray());
  }

  /** The first {@code count} objects as an array of references. */
  static void references(ByteBuffer out, int[] objects, int count) {
    out.append('[');
    for (int i = 0; i < count; i++) {
      out.append(objects[i]).append(" 0 R ");
    }
    out.append(']');
  }
}
