package jarwright.render;

/**
 * How words are set; an element passes its style on to what stands in it.
 *
 * @param shop faces, hyphenation, accent
 * @param bold whether in the bold face
 * @param size type size in pt
 * @param leading line height as a multiple of the size
 * @param tone ink of the words
 * @param align {@code left}, {@code center} or {@code right}
 * @param hyphenate whether long words may be divided
 */
record Style(
    Shop shop,
    boolean bold,
    double size,
    double leading,
    Tone tone,
    String align,
    boolean hyphenate) {

  Face face() {
    return bold ? shop.typeface().bold() : shop.typeface().regular();
  }

  Style sized(double newSize) {
    return new Style(shop, bold, newSize, leading, tone, align, hyphenate);
  }

  Style bolder() {
    return new Style(shop, true, size, leading, tone, align, hyphenate);
  }

  /** The same style with words kept whole. */
  Style whole() {
    return hyphenate ? new Style(shop, bold, size, leading, tone, align, false) : this;
  }

  Style aligned(String newAlign) {
    return new Style(shop, bold, size, leading, tone, newAlign, hyphenate);
  }

  /** This style as changed by the attributes {@code size, b, ink, align, leading, hyphenate}. */
  Style read(Element element) {
    double newLeading = element.number("leading", leading);
    if (!(newLeading >= 1 && newLeading <= 3)) {
      throw element.bad("leading", String.valueOf(newLeading), "from 1 to 3 times the size");
    }
    return new Style(
        shop,
        element.yes("b", bold),
        element.size("size", size),
        newLeading,
        shop.tone(element, "ink", tone),
        element.choice("align", align, "left", "center", "right"),
        element.yes("hyphenate", hyphenate));
  }
}
