package jarwright.water;

import jarwright.quantity.Length;
import jarwright.quantity.Volume;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What to say about the water of a load. */
public sealed interface WaterAdvice {

  /** One result for each of the four answers. */
  <T> T fold(
      Function<Covering, T> covering,
      Function<TooShallow, T> tooShallow,
      Function<Unmeasured, T> unmeasured,
      Function<Pressure, T> pressure);

  /** How boiling water has to stand, jars in: so far above the lids, so far below the rim. */
  record Cover(Length aboveLids, Length belowRim) {}

  /**
   * Boiling water, and room for it.
   *
   * @param before to put in before the jars
   * @param depth of that water from the bottom of the canner
   * @param from depth from the bottom, jars in, at which every lid is covered as it must be
   * @param to depth from the bottom, jars in, that must not be passed
   * @param kettle boiling water to keep ready for topping up
   * @param tallest the jar, lid on, that all this is reckoned for
   * @param measureJars whether taller jars of this size are made, so that hers must be measured
   * @param rackAssumed whether the rack's height was not given
   */
  record Covering(
      Cover cover,
      Volume before,
      Length depth,
      Length from,
      Length to,
      Volume kettle,
      Length tallest,
      boolean measureJars,
      boolean rackAssumed)
      implements WaterAdvice {
    @Override
    public <T> T fold(
        Function<Covering, T> covering,
        Function<TooShallow, T> tooShallow,
        Function<Unmeasured, T> unmeasured,
        Function<Pressure, T> pressure) {
      return covering.apply(this);
    }
  }

  /**
   * Boiling water, but not even the shortest jars of this size can be covered.
   *
   * @param inside height of the canner
   * @param least inside height for the shortest jars that are made
   * @param sure inside height for the tallest
   */
  record TooShallow(Cover cover, Length inside, Length least, Length sure) implements WaterAdvice {
    @Override
    public <T> T fold(
        Function<Covering, T> covering,
        Function<TooShallow, T> tooShallow,
        Function<Unmeasured, T> unmeasured,
        Function<Pressure, T> pressure) {
      return tooShallow.apply(this);
    }
  }

  /**
   * Boiling water, not reckoned because a measure is missing: the rule alone holds.
   *
   * @param missing keys of the canner in the plan, and {@code jar} where no dimensions of its size
   *     are known
   */
  record Unmeasured(Cover cover, List<String> missing) implements WaterAdvice {
    public Unmeasured {
      missing = List.copyOf(missing);
    }

    @Override
    public <T> T fold(
        Function<Covering, T> covering,
        Function<TooShallow, T> tooShallow,
        Function<Unmeasured, T> unmeasured,
        Function<Pressure, T> pressure) {
      return unmeasured.apply(this);
    }
  }

  /**
   * A pressure canner: water from one depth to another, put in before the jars.
   *
   * @param volumes the same as volumes; empty where the inside diameter is not given
   */
  record Pressure(Length from, Length to, Optional<Volumes> volumes) implements WaterAdvice {
    /** The least and the most water; both lie inside the two depths. */
    public record Volumes(Volume from, Volume to) {}

    @Override
    public <T> T fold(
        Function<Covering, T> covering,
        Function<TooShallow, T> tooShallow,
        Function<Unmeasured, T> unmeasured,
        Function<Pressure, T> pressure) {
      return pressure.apply(this);
    }
  }
}
