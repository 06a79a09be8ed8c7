package jarwright.files;

import jarwright.pantry.Origin;

/** What the column {@code process} of a list says; empty for jars that were made here. */
final class ProcessWord {
  private ProcessWord() {}

  static String of(Origin origin) {
    if (origin instanceof Origin.MadeHere) {
      return "";
    }
    if (origin instanceof Origin.ByWord by) {
      return "by word of " + by.vouched().who() + ": " + by.vouched().source();
    }
    return origin instanceof Origin.Refused ? "not tested" : "not known";
  }
}
