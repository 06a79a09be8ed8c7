package jarwright.pantry;

import jarwright.batch.Batch;
import jarwright.process.AcidRule;

/** Where the acid comes from without which the food would not be safe. */
public enum AcidNeed {
  /** The food needs none added, or it ferments. */
  NONE(""),
  /** A measured dose goes into each jar. */
  EACH_JAR("yes"),
  /** The recipe's vinegar, lemon or lime juice. */
  IN_RECIPE("recipe");

  private final String word;

  AcidNeed(String word) {
    this.word = word;
  }

  static AcidNeed of(Batch batch) {
    if (batch.acid().isPresent()) {
      return EACH_JAR;
    }
    return batch.product().acid() instanceof AcidRule.InFormula ? IN_RECIPE : NONE;
  }

  /** As the ledger writes it; empty for none. */
  String word() {
    return word;
  }

  /**
   * Reads {@link #word}.
   *
   * @throws IllegalArgumentException naming the text where it is none of these
   */
  static AcidNeed parse(String text) {
    for (AcidNeed need : values()) {
      if (need.word.equals(text)) {
        return need;
      }
    }
    throw new IllegalArgumentException("\"" + Shown.of(text) + "\" tells of no acid");
  }
}
