package jarwright.process;

import jarwright.quantity.MeasuredText;
import jarwright.quantity.TimeSpan;
import java.util.Optional;

/**
 * One action in preparing a product, in working order.
 *
 * @param pack the pack it is for; empty for every pack of the product
 * @param text verb first; empty for {@link Kind#BUBBLES}
 * @param caution stands where it bites; empty where there is none
 * @param waiting time that passes without hands once the step is done, or in it; empty where none
 *     does
 * @param way the way of working that it belongs to, as {@code lime} or {@code frozen}; empty where
 *     it is done every time
 */
public record PreparationStep(
    String productId,
    Optional<Pack> pack,
    Stage stage,
    Kind kind,
    MeasuredText text,
    Optional<MeasuredText> caution,
    Optional<Wait> waiting,
    Optional<String> way) {
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

  /**
   * Time without hands: a soak, a chill, a ferment.
   *
   * @param span from the shortest to the longest that is printed
   */
  public record Wait(TimeSpan span, Source source) {
    private static final String UNPRINTED = "common practice";

    /** Minutes below which hands go on with something else meanwhile. */
    private static final int SHORT = 15;

    /** Whether it is so long that the work has to be planned round it. */
    public boolean stopsWork() {
      return span.mostMinutes() >= SHORT;
    }

    /** Whether the guide prints its length. */
    public boolean isPublished() {
      return !source.place().contains(UNPRINTED);
    }
  }

  /** Whether it is done every time, and so is planned with. */
  public boolean isUsual() {
    return way.isEmpty();
  }

  public boolean isFor(Pack used) {
    return pack.isEmpty() || pack.get() == used;
  }
}
