package jarwright.process;

import jarwright.quantity.MeasuredText;
import java.util.Optional;

/**
 * One action in preparing a product, in working order.
 *
 * @param pack the pack it is for; empty for every pack of the product
 * @param text verb first; empty for {@link Kind#BUBBLES}
 * @param caution stands where it bites; empty where there is none
 */
public record PreparationStep(
    String productId,
    Optional<Pack> pack,
    Stage stage,
    Kind kind,
    MeasuredText text,
    Optional<MeasuredText> caution) {
  /** When in the work the step comes. */
  public enum Stage {
    DAY_BEFORE,
    PRODUCE,
    COOK,
    FILL,
    /** A canner's water of this product alone, in place of the usual one. */
    CANNER,
    /** A venting of this product alone, in place of the usual one. */
    VENT
  }

  /** What the step asks of the cook. */
  public enum Kind {
    /** Hands. */
    ACTION,
    /** Something is on the fire for the time that the text says. */
    COOK,
    /** Nothing to do until the time has run. */
    WAIT,
    /** Air bubbles are worked out of the filled jars. */
    BUBBLES
  }

  public boolean isFor(Pack used) {
    return pack.isEmpty() || pack.get() == used;
  }
}
