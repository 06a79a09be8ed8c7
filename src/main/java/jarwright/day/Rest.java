package jarwright.day;

/** Waiting before jars are lifted out: AIB 539 (2015) Guide 1. */
final class Rest {
  /** With the heat off and the lid off a boiling-water canner. */
  static final int MINUTES = 5;

  /** After the weight is off a canner without pressure, before its lid. */
  static final int AFTER_PRESSURE_MINUTES = 10;

  private Rest() {}
}
