package jarwright.plan;

import jarwright.problem.Place;
import jarwright.quantity.Fraction;
import java.util.Optional;

/**
 * How long a piece of hand work takes in this household, instead of the program's guess.
 *
 * @param task id of the work, as {@code prepare}
 * @param of a product or a category of products; empty for all
 * @param fixed minutes of one pair of hands for a load as a whole
 * @param each further minutes for each pound or jar, whichever the program's own figure goes by;
 *     empty for none
 * @param where it is written
 */
public record OwnTime(
    String task, Optional<String> of, Span fixed, Optional<Span> each, Place where) {

  /** From a least to a most, in minutes. */
  public record Span(Fraction least, Fraction most) {
    public Span {
      if (least.signum() < 0 || most.compareTo(least) < 0) {
        throw new IllegalArgumentException("a span of minutes runs upwards from 0");
      }
    }
  }
}
