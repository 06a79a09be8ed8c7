package jarwright.render;

/**
 * What all parts of one sheet share.
 *
 * @param typeface the faces
 * @param hyphens where words of the sheet's language may be divided
 * @param accent the sheet's one colour besides black
 */
record Shop(Typeface typeface, Hyphens hyphens, Tone accent) {

  /** The tone an attribute names. */
  Tone tone(Element element, String attribute, Tone otherwise) {
    String word = element.text(attribute, null);
    if (word == null) {
      return otherwise;
    }
    Tone tone = Tone.parse(word, accent);
    if (tone == null) {
      throw element.bad(attribute, word, Tone.FORMS);
    }
    return tone;
  }
}
