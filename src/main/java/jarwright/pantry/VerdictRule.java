package jarwright.pantry;

import java.util.OptionalInt;

/**
 * What one source says about one finding.
 *
 * @param id short name by which the ledger remembers it
 * @param hours after the process ended in which to re-can, freeze or refrigerate; present for that
 *     verdict only. When they are over, the jar is thrown away
 * @param days after the process ended in which it is eaten from the refrigerator
 * @param published false where it is the custom of the trade or from memory
 * @param source publication and what it says
 */
public record VerdictRule(
    String id,
    Finding finding,
    Grade verdict,
    OptionalInt hours,
    OptionalInt days,
    boolean published,
    String source) {
  public VerdictRule {
    if (!id.matches("[a-z][a-z-]*")) {
      throw new IllegalArgumentException("a rule's id is small letters and hyphens, not " + id);
    }
    if (source.isBlank()) {
      throw new IllegalArgumentException("the rule " + id + " needs its source");
    }
    if (hours.isPresent() != (verdict == Grade.RECAN)) {
      throw new IllegalArgumentException(
          "the rule " + id + " has hours if it says recan, and only then");
    }
    if (verdict == Grade.FREEZER) {
      throw new IllegalArgumentException("the rule " + id + " sends no jar to the freezer");
    }
    boolean cold = verdict == Grade.REFRIGERATE;
    boolean either = verdict == Grade.RECAN;
    if (!either && days.isPresent() != cold) {
      throw new IllegalArgumentException(
          "the rule " + id + " has days if it says refrigerate, and may have them for recan");
    }
  }
}
