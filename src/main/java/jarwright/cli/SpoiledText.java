package jarwright.cli;

import jarwright.lot.LotCode;
import jarwright.pantry.LotFacts;
import java.util.ArrayList;
import java.util.List;

/** What to check and to do when a jar of a lot was spoiled, with the source of each advice. */
final class SpoiledText {
  private SpoiledText() {}

  /** How jars are looked over that a look can clear. */
  static String siblings() {
    return "THE OTHER JARS OF THE LOT: do not eat them yet. First read the record: jarwright trace"
        + " LOT. If any step fell short or is not known, throw them all away. Else look over"
        + " each one. BEFORE opening, throw it away if you see ANY of these: lid not pulled"
        + " down tight or bulging; leaks or dried streaks below the rim; rising bubbles;"
        + " mold; odd color or cloudy liquid. WHEN opening, throw it away if it spurts,"
        + " smells odd or has mold. Never taste to find out. (AIB 539 (2015) Guide 1,"
        + " identifying and handling spoiled canned food.) When in doubt, throw it out (CDC,"
        + " Home-Canned Foods).";
  }

  /** That no look clears the others. */
  static String condemned() {
    return "THE OTHER JARS OF THE LOT: do not eat. Throw away, without opening them. No look, smell"
        + " or taste can clear them: the toxin of botulism does not show (CDC, Home-Canned"
        + " Foods; to condemn the whole lot for it: common practice, no source).";
  }

  /** For jars of the lot that were taken before. */
  static String eaten() {
    return "DID ANYONE EAT FROM THESE JARS? Double or blurred vision, drooping eyelids, slurred"
        + " speech, trouble swallowing or breathing, weak muscles: go to an emergency room"
        + " at once or call your emergency number (CDC, Symptoms of Botulism). If any of it"
        + " is left anywhere, or was given away: do not eat.";
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
