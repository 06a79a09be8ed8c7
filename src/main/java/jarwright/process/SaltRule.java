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
    /**
     * Part of a formula, for taste and texture. The acid keeps it safe: AIB 539 (2015) Guide 6,
     * Pickles with reduced salt content.
     */
    IN_FORMULA,
    /**
     * Part of the brine in which the food ferments or stands for days, and of its safety: never
     * left out or cut down. The same source.
     */
    BRINE
  }

  /** Whether it goes in whatever the household wishes. */
  public boolean isFixed() {
    return kind == Kind.IN_FORMULA || kind == Kind.BRINE;
  }

  /** The amount for a jar, in exact proportion to its content. */
  public Optional<Volume> perJar(JarSize size) {
    return amount.map(a -> a.times(size.pints().dividedBy(jar.pints())));
  }
}
