package jarwright.process;

import jarwright.quantity.Volume;
import java.util.Optional;

/**
 * Salt in a product.
 *
 * @param kind what the guide says of it
 * @param amount printed for the jar, the lower end of a range; empty where no figure is printed
 * @param jar the size that the amount is printed for
 */
public record SaltRule(Kind kind, Optional<Volume> amount, JarSize jar) {
  /** Why the salt is there. */
  public enum Kind {
    /** None is used. */
    NONE,
    /** For taste: may be left out. */
    TASTE,
    /** Part of a formula or ferment, and of its safety: never left out or changed. */
    IN_FORMULA
  }

  /** The amount for a jar, in exact proportion to its content. */
  public Optional<Volume> perJar(JarSize size) {
    return amount.map(a -> a.times(size.pints().dividedBy(jar.pints())));
  }
}
