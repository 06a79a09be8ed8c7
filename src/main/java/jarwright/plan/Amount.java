package jarwright.plan;

import jarwright.quantity.Mass;
import java.util.function.Function;
import java.util.function.IntFunction;

/** How much a batch is to be: so many jars, or so much produce. */
public sealed interface Amount {
  int MOST_JARS = 2_000;

  <T> T fold(IntFunction<T> jars, Function<Mass, T> produce);

  /** A number of jars. */
  record Jars(int count) implements Amount {
    public Jars {
      if (count < 1 || count > MOST_JARS) {
        throw new IllegalArgumentException("a batch has 1 to " + MOST_JARS + " jars, not " + count);
      }
    }

    @Override
    public <T> T fold(IntFunction<T> jars, Function<Mass, T> produce) {
      return jars.apply(count);
    }
  }

  /** Fresh produce as bought or picked. */
  record Produce(Mass mass) implements Amount {
    public Produce {
      if (mass.amount().signum() <= 0) {
        throw new IllegalArgumentException("produce weighs more than nothing, not " + mass);
      }
    }

    @Override
    public <T> T fold(IntFunction<T> jars, Function<Mass, T> produce) {
      return produce.apply(mass);
    }
  }
}
