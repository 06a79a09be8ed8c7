package jarwright.day;

import jarwright.process.TestedProcess;
import jarwright.water.Estimate;
import java.util.function.ToIntFunction;

/** How long a task takes: fixed by a rule, or estimated. */
public sealed interface Minutes {
  /** What the timeline reckons with. */
  int planned();

  /** The length under a way of reading estimates; a fixed length whatever the way. */
  int read(ToIntFunction<Estimate> way);

  /** A published length, which is never shortened. */
  record Fixed(int minutes) implements Minutes {
    public Fixed {
      if (minutes < 1) {
        throw new IllegalArgumentException("a fixed time is a minute or more");
      }
    }

    /** Passes the minutes of a tested process through unchanged. */
    static Fixed of(TestedProcess process) {
      return new Fixed(process.minutes());
    }

    @Override
    public int planned() {
      return minutes;
    }

    @Override
    public int read(ToIntFunction<Estimate> way) {
      return minutes;
    }
  }

  /** A guess. */
  record Guess(Estimate estimate) implements Minutes {
    @Override
    public int planned() {
      return estimate.planned();
    }

    @Override
    public int read(ToIntFunction<Estimate> way) {
      return way.applyAsInt(estimate);
    }
  }

  /**
   * Time without hands, as the product's steps have it.
   *
   * @param planned no less than the shortest that they print
   * @param published whether a guide prints its length; else it is common practice
   */
  record Waited(int planned, boolean published) implements Minutes {
    public Waited {
      if (planned < 1) {
        throw new IllegalArgumentException("a wait is a minute or more");
      }
    }

    @Override
    public int read(ToIntFunction<Estimate> way) {
      return planned;
    }
  }
}
