package jarwright.render;

/** Points of the page, 72 to the inch of 25.4 mm, against the millimetres users write. */
final class Units {
  private Units() {}

  static double pt(double mm) {
    return mm * 72 / 25.4;
  }

  static double mm(double pt) {
    return pt * 25.4 / 72;
  }
}
