package jarwright.process;

import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import jarwright.quantity.Volume;
import java.util.Optional;

/**
 * Something that a product takes besides a formula: its produce, and what its steps call for.
 *
 * @param pack the pack that takes it; empty for every pack
 * @param what its name in the shop
 * @param per what the amount is for
 * @param part of the weight of produce; one where it is for something else
 * @param volume for each of those; empty where none is said
 * @param mass for each of those, or the produce that the volume is for
 * @param optional whether it may be left out
 */
public record Supply(
    String productId,
    Optional<Pack> pack,
    String what,
    Aisle aisle,
    Per per,
    Fraction part,
    Optional<Volume> volume,
    Optional<Mass> mass,
    boolean optional) {

  /** What an amount is for. */
  public enum Per {
    /** A part of the weight of produce. */
    SHARE,
    /** Each quart that the jars hold. */
    QUART,
    /** Each jar. */
    JAR,
    /** So much produce. */
    WEIGHT,
    /** Each gallon of water that it is stirred into. */
    GALLON,
    /** Each quart of the liquid that covers the food in the jars; without a weight, itself. */
    COVER,
    /** As much as covers the food in its bowl. */
    ENOUGH,
    /** As much as fills the jars: the guide prints no weight. */
    JARS,
    /** As the cook likes it. */
    TASTE
  }

  public boolean isFor(Pack used) {
    return pack.isEmpty() || pack.get() == used;
  }
}
