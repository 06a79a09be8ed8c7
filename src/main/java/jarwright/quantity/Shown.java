package jarwright.quantity;

/** What came in, cut to a length that a one-line message can hold. */
final class Shown {
  private static final int LONGEST = 40;

  private Shown() {}

  static String of(String text) {
    String oneLine = text.strip().replaceAll("\\p{Cntrl}+", " ");
    return oneLine.length() <= LONGEST
        ? oneLine
        : oneLine.substring(0, oneLine.offsetByCodePoints(0, oneLine.codePointCount(0, LONGEST)))
            + "…";
  }
}
