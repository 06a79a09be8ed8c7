package jarwright.pantry;

/** A typed text as a message shows it: one line, not too long. */
final class Shown {
  private static final int LONGEST = 40;

  private Shown() {}

  static String of(String text) {
    String oneLine = text.strip().replaceAll("\\p{Cntrl}+", " ");
    return oneLine.length() <= LONGEST ? oneLine : oneLine.substring(0, LONGEST) + "…";
  }
}
