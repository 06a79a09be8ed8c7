package jarwright.render;

import jarwright.page.TemplateFault;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads the sheet markup of a filled template in one pass, element by element. */
final class Markup {
  /** Far more than a sheet has, and far less than a stack holds. */
  private static final int DEEPEST = 60;

  private final Source source;
  private final XMLStreamReader reader;
  private int lastOffset;
  private int wordsOffset;
  private int depth;

  Markup(Source source) {
    this.source = source;
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    try {
      this.reader = factory.createXMLStreamReader(source.text());
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  /** The outermost element. */
  Element root() {
    step();
    return new Element(this, reader);
  }

  /**
   * The next element inside {@code parent}, or null at the parent's end.
   *
   * @throws TemplateFault if words stand between the elements
   */
  Element child(Element parent) {
    Object next = next();
    if (next instanceof String text) {
      if (text.isBlank()) {
        return child(parent);
      }
      String message = "words may not stand directly in <" + parent.name() + ">: " + shorten(text);
      throw source.fault(Source.Aim.WORD_FROM, wordsOffset, message);
    }
    return (Element) next;
  }

  /** What comes next inside the open element: an {@link Element}, a String, or null at its end. */
  Object next() {
    int event = step();
    if (event == XMLStreamConstants.START_ELEMENT) {
      return new Element(this, reader);
    }
    return event == XMLStreamConstants.END_ELEMENT ? null : reader.getText();
  }

  /** The words inside an element that holds nothing else. */
  String words(Element parent) {
    StringBuilder words = new StringBuilder();
    for (Object next = next(); next != null; next = next()) {
      if (next instanceof Element element) {
        throw element.fault("<" + parent.name() + "> holds words only, not <" + element + ">");
      }
      words.append((String) next);
    }
    return words.toString();
  }

  /** Reads to the end of an element that holds nothing. */
  void end(Element parent) {
    Element inner = child(parent);
    if (inner != null) {
      throw inner.fault("<" + parent.name() + "> holds nothing, not <" + inner + ">");
    }
  }

  TemplateFault fault(String what) {
    return source.fault(Source.Aim.HERE, lastOffset, what);
  }

  /** The fault of an element whose first tag ends at that offset. */
  TemplateFault fault(int tagEnd, String what) {
    return source.fault(Source.Aim.TAG_BEFORE, tagEnd, what);
  }

  String place(int tagEnd) {
    return source.place(Source.Aim.TAG_BEFORE, tagEnd);
  }

  /** Where the tag just read ends in the filled template. */
  int tagEnd() {
    return lastOffset;
  }

  /** Reads on to the end of the text, where nothing may follow the outermost element. */
  void finish() {
    try {
      while (reader.hasNext()) {
        reader.next();
      }
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  private int step() {
    try {
      int event = reader.next();
      while (event == XMLStreamConstants.COMMENT
          || event == XMLStreamConstants.PROCESSING_INSTRUCTION
          || event == XMLStreamConstants.SPACE) {
        event = reader.next();
      }
      depth += event == XMLStreamConstants.START_ELEMENT ? 1 : 0;
      depth -= event == XMLStreamConstants.END_ELEMENT ? 1 : 0;
      wordsOffset = lastOffset;
      lastOffset = reader.getLocation().getCharacterOffset();
      if (event == XMLStreamConstants.ENTITY_REFERENCE || event == XMLStreamConstants.DTD) {
        throw fault("a sheet has no DTD and no entities of its own");
      }
      if (depth > DEEPEST) {
        throw fault("elements stand inside each other more than " + DEEPEST + " deep");
      }
      return event;
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  private TemplateFault broken(XMLStreamException e) {
    int offset = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getCharacterOffset());
    String message = e.getMessage();
    int detail = message.indexOf("Message: ");
    return source.fault(
        Source.Aim.HERE,
        offset,
        "the sheet is not well-formed XML: "
            + (detail < 0 ? message : message.substring(detail + 9)));
  }

  static String shorten(String text) {
    String plain = text.strip().replaceAll("\\s+", " ");
    return "\"" + (plain.length() > 40 ? plain.substring(0, 39) + "…" : plain) + "\"";
  }
}
