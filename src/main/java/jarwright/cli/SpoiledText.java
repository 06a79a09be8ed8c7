package jarwright.cli;

import jarwright.lot.LotCode;
import jarwright.pantry.LotFacts;
import java.util.ArrayList;
import java.util.List;

/** What to check and to do when a jar of a lot was spoiled, with the source of each advice. */
final class SpoiledText {
  private SpoiledText() {}

  /** How the jars that are left are looked at. */
  static String siblings() {
    return "THE OTHERS OF THE LOT are in doubt from now on. Look at each without opening or"
        + " tasting: is the lid's middle still drawn in and tight; no dried streaks down"
        + " from the rim, no rising bubbles, no odd colour, no leak or bulge? On opening: no"
        + " spurting, no odd smell, no mould on the food or under the lid? (AIB 539 (2015)"
        + " Guide 1, identifying and handling spoiled canned food.) When in doubt, throw it"
        + " out (CDC, Home-Canned Foods).";
  }

  /** For jars of the lot that were taken before. */
  static String eaten() {
    return "TAKEN BEFORE: whoever ate of these and has double or blurred vision, drooping eyelids,"
        + " slurred speech, trouble swallowing or breathing, or weak muscles goes to an emergency"
        + " room at once (CDC, Symptoms of Botulism).";
  }

  /** Where the cause may lie, and which other jars share it. */
  static String cause(LotCode lot, LotFacts facts) {
    List<String> alike = new ArrayList<>();
    facts.packed().ifPresent(d -> alike.add("--day " + d));
    add(alike, "--from", facts.from());
    add(alike, "--lids", facts.lids());
    String share =
        alike.isEmpty()
            ? ""
            : " Jars that share its day, source or lids: jarwright trace "
                + String.join(", or ", alike)
                + ".";
    return "WHY? Read the lot's record, jarwright trace "
        + lot
        + ": minutes, heat, acid, headspace, seal. If any of it fell short or is not known, throw"
        + " the whole lot away (common practice, no source)."
        + share;
  }

  private static void add(List<String> alike, String option, String said) {
    if (!said.isEmpty()) {
      alike.add(option + " \"" + said + "\"");
    }
  }
}
