package jarwright.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Gathers the words and small drawings of one paragraph, white space folded as in HTML. */
final class Inline {
  private static final Set<String> NAMES =
      Set.of("b", "span", "figure", "frac", "keep", "br", "blank", "box", "sign", "page", "pages");

  private final Markup markup;
  private final List<Piece> pieces = new ArrayList<>();
  private boolean spaceWaits;
  private boolean lineBegins = true;
  private int glues;

  Inline(Markup markup) {
    this.markup = markup;
  }

  static boolean holds(String name) {
    return NAMES.contains(name);
  }

  /** The names for messages. */
  static String names() {
    return "b, span, figure, frac, keep, br, blank, box, sign, page, pages";
  }

  /** All that stands in {@code parent}, which may hold words only. */
  static List<Piece> read(Markup markup, Element parent, Style style) {
    Inline inline = new Inline(markup);
    inline.content(parent, style, 0);
    return inline.pieces();
  }

  boolean isEmpty() {
    return pieces.isEmpty();
  }

  List<Piece> pieces() {
    return List.copyOf(pieces);
  }

  private void content(Element parent, Style style, int glue) {
    for (Object next = markup.next(); next != null; next = markup.next()) {
      if (next instanceof Element element) {
        if (!holds(element.name())) {
          throw element.fault(
              "<"
                  + element
                  + "> may not stand among the words of <"
                  + parent
                  + ">; there may be "
                  + names());
        }
        add(element, style, glue);
      } else {
        add((String) next, style, glue);
      }
    }
  }

  void add(String text, Style style) {
    add(text, style, 0);
  }

  private void add(String text, Style style, int glue) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == ' ' || c == '\n' || c == '\t' || c == '\r') {
        spaceWaits = !lineBegins;
      } else {
        if (spaceWaits) {
          out.append(' ');
          spaceWaits = false;
        }
        out.append(c);
        lineBegins = false;
      }
    }
    if (out.length() > 0) {
      pieces.add(Piece.Words.of(out.toString(), style, glue));
    }
  }

  void add(Element element, Style style) {
    add(element, style, 0);
  }

  private void add(Element element, Style style, int glue) {
    switch (element.name()) {
      case "b" -> {
        element.done();
        content(element, style.bolder(), glue);
      }
      case "span" -> {
        Style inner = style.read(element);
        element.done();
        content(element, inner, glue);
      }
      case "keep" -> {
        element.done();
        content(element, style, ++glues);
      }
      case "figure" -> figure(element, style, glue);
      case "frac" -> {
        element.done();
        fraction(markup.words(element), style, style.face(), glue);
      }
      case "br" -> {
        element.done();
        markup.end(element);
        pieces.add(new Piece.Newline());
        spaceWaits = false;
        lineBegins = true;
      }
      case "page", "pages" -> {
        element.done();
        markup.end(element);
        space(style, glue);
        pieces.add(
            new Piece.PageNumber(Piece.Words.of("", style, glue), element.name().equals("pages")));
      }
      default -> {
        Piece drawn = Signs.read(element, style, glue);
        markup.end(element);
        space(style, glue);
        pieces.add(drawn);
      }
    }
  }

  /** A figure to act on: larger, in the face of figures, never divided, fractions set. */
  private void figure(Element element, Style style, int glue) {
    double scale = element.number("scale", 1.35);
    element.done();
    Style large = style.sized(style.size() * scale).bolder();
    fraction(
        markup.words(element), large, style.shop().typeface().figures(), glue > 0 ? glue : ++glues);
  }

  private void fraction(String text, Style style, Face face, int glue) {
    boolean spaced = spaceWaits || (!text.isEmpty() && text.charAt(0) <= ' ' && !lineBegins);
    if (spaced) {
      spaceWaits = true;
      space(style, glue);
    }
    pieces.addAll(Fractions.set(text.strip(), style, face, glue > 0 ? glue : ++glues));
    lineBegins = false;
    spaceWaits = !text.isEmpty() && text.charAt(text.length() - 1) <= ' ';
  }

  private void space(Style style, int glue) {
    if (spaceWaits) {
      pieces.add(Piece.Words.of(" ", style, glue));
      spaceWaits = false;
    }
    lineBegins = false;
  }
}
