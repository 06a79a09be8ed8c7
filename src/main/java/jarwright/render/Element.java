package jarwright.render;

import jarwright.page.TemplateFault;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamReader;

/**
 * One element of the sheet markup and its attributes, read strictly: whatever is not asked for, or
 * is not of the kind asked for, is a fault with its place. Lengths come in mm and go out in points.
 */
final class Element {
  /** The smallest type in points; below it nobody reads. */
  static final double LEAST_SIZE = 6;

  private final Markup markup;
  private final String name;
  private final int tagEnd;
  private final Map<String, String> attributes = new LinkedHashMap<>();
  private final List<String> known = new ArrayList<>();

  Element(Markup markup, XMLStreamReader reader) {
    this.markup = markup;
    this.name = reader.getLocalName();
    this.tagEnd = markup.tagEnd();
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      attributes.put(reader.getAttributeLocalName(i), reader.getAttributeValue(i));
    }
  }

  String name() {
    return name;
  }

  /** The place in the template, as {@code labels.ftl:12: <qr>}. */
  String where() {
    return markup.place(tagEnd) + ": <" + name + ">";
  }

  /** The place in the template, as {@code labels.ftl:12}. */
  String place() {
    return markup.place(tagEnd);
  }

  TemplateFault fault(String what) {
    return markup.fault(tagEnd, what);
  }

  /** The fault of an element that may not stand here. */
  TemplateFault notHere(Element parent, String... allowed) {
    return fault(
        "<"
            + name
            + "> may not stand in <"
            + parent.name
            + ">; there may be "
            + String.join(", ", allowed));
  }

  /** Ends the reading of attributes: any that nobody asked for is a fault. */
  void done() {
    if (!attributes.isEmpty()) {
      String unknown = attributes.keySet().iterator().next();
      throw fault(
          "<"
              + name
              + "> has no attribute \""
              + unknown
              + "\"; "
              + (known.isEmpty() ? "it has none" : "it may have " + String.join(", ", known)));
    }
  }

  /** Whether it has no attributes but those read. */
  boolean isBare() {
    return attributes.isEmpty();
  }

  boolean has(String attribute) {
    return attributes.containsKey(attribute);
  }

  String text(String attribute) {
    String value = take(attribute);
    if (value == null) {
      throw missing(attribute);
    }
    return value;
  }

  String text(String attribute, String otherwise) {
    String value = take(attribute);
    return value == null ? otherwise : value;
  }

  /** A length given in mm, in points. */
  double mm(String attribute) {
    return Units.pt(number(attribute));
  }

  /** A length given in mm, in points; {@code otherwise} is in mm as well. */
  double mm(String attribute, double otherwise) {
    return Units.pt(number(attribute, otherwise));
  }

  double number(String attribute) {
    if (!has(attribute)) {
      throw missing(attribute);
    }
    return number(attribute, 0);
  }

  double number(String attribute, double otherwise) {
    String value = take(attribute);
    if (value == null) {
      return otherwise;
    }
    try {
      double number = Double.parseDouble(value.strip());
      if (Math.abs(number) <= 100_000) {
        return number;
      }
    } catch (NumberFormatException e) {
      // told below, together with infinities
    }
    throw bad(attribute, value, "a number");
  }

  /** A type size in points. */
  double size(String attribute, double otherwise) {
    String written = attributes.get(attribute);
    double size = number(attribute, otherwise);
    if (!(size >= LEAST_SIZE && size <= 400)) {
      throw bad(attribute, written, "a type size from 6 to 400 pt");
    }
    return size;
  }

  /** A line's weight in points: 0 for none, else at least 0.5, since hairlines vanish in print. */
  double weight(String attribute, double otherwise) {
    String written = attributes.get(attribute);
    double weight = number(attribute, otherwise);
    if (weight != 0 && !(weight >= 0.5 && weight <= 60)) {
      throw bad(attribute, written, "0 or a line weight from 0.5 to 60 pt");
    }
    return weight;
  }

  int whole(String attribute, int otherwise, int least, int most) {
    String written = attributes.get(attribute);
    double number = number(attribute, otherwise);
    if (number != Math.rint(number) || number < least || number > most) {
      throw bad(attribute, written, "a whole number from " + least + " to " + most);
    }
    return (int) number;
  }

  boolean yes(String attribute, boolean otherwise) {
    return choice(attribute, otherwise ? "yes" : "no", "yes", "no").equals("yes");
  }

  String choice(String attribute, String otherwise, String... possible) {
    String value = otherwise == null ? text(attribute) : text(attribute, otherwise);
    if (!Arrays.asList(possible).contains(value)) {
      throw bad(attribute, value, "one of " + String.join(", ", possible));
    }
    return value;
  }

  /** The numbers of a list such as {@code "10 20.5 *"}; a star counts as shares of the rest. */
  List<String> list(String attribute) {
    String value = text(attribute, "").strip();
    return value.isEmpty() ? List.of() : List.of(value.split("[\\s,]+"));
  }

  TemplateFault bad(String attribute, String value, String wanted) {
    return fault("<" + name + " " + attribute + "=\"" + value + "\">: it must be " + wanted);
  }

  private TemplateFault missing(String attribute) {
    return fault("<" + name + "> needs the attribute \"" + attribute + "\"");
  }

  private String take(String attribute) {
    known.add(attribute);
    return attributes.remove(attribute);
  }

  @Override
  public String toString() {
    return name;
  }
}
