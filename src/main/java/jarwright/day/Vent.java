package jarwright.day;

/** Venting of a pressure canner: AIB 539 (2015) Guide 1. */
final class Vent {
  /** From a steady jet of steam, for every load. */
  static final int MINUTES = 10;

  private Vent() {}
}
