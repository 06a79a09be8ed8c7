package jarwright.day;

import jarwright.quantity.Length;
import java.util.List;
import java.util.Optional;

/** One step of a checklist, in the words of its print-out: verb first, one action. */
public sealed interface Step {
  Line line();

  Optional<Caution> caution();

  /** What the step is, for the one who draws it. */
  Kind kind();

  /** The figure to act on, set big; empty where there is none. */
  default Optional<Figure> figure() {
    return Optional.empty();
  }

  /** The line's words and amounts as one text. */
  default String text() {
    return line().text();
  }

  /** Kinds of step. */
  enum Kind {
    ACTION,
    TALLY,
    WAIT,
    GAUGE,
    CLOCK,
    RECORD
  }

  /** Something to do with the hands. */
  record Action(Line line, Optional<Figure> figure, Optional<Caution> caution) implements Step {
    @Override
    public Kind kind() {
      return Kind.ACTION;
    }
  }

  /** Something to do to each of so many jars, ticked jar by jar so that none is missed. */
  record PerJar(Line line, Optional<Figure> figure, int jars, Optional<Caution> caution)
      implements Step {
    @Override
    public Kind kind() {
      return Kind.TALLY;
    }
  }

  /** Time that has to run: a boil, a rest, a cooling. */
  record Wait(Line line, Optional<Figure> figure, Optional<Caution> caution) implements Step {
    @Override
    public Kind kind() {
      return Kind.WAIT;
    }
  }

  /** Room to leave below the rim, drawn as deep as it is. */
  record Gauge(Line line, List<Depth> depths, Optional<Caution> caution) implements Step {
    public Gauge {
      depths = List.copyOf(depths);
    }

    /**
     * One depth.
     *
     * @param to what it is measured to, in words; empty for all the content
     */
    public record Depth(String to, Figure figure, Length depth) {}

    @Override
    public Kind kind() {
      return Kind.GAUGE;
    }
  }

  /**
   * The process itself: the clock starts here, and every load writes its own times.
   *
   * @param minutes what the clock must show
   * @param pressure what the gauge must show, or the weight to use; empty for boiling water
   * @param fields captions of the write-in fields of each load
   * @param loads jars in each load
   * @param caution what starts the clock again
   */
  record Clock(
      Line line,
      int minutes,
      Optional<Figure> pressure,
      List<String> fields,
      List<Integer> loads,
      Optional<Caution> caution)
      implements Step {
    public Clock {
      fields = List.copyOf(fields);
      loads = List.copyOf(loads);
    }

    @Override
    public Kind kind() {
      return Kind.CLOCK;
    }
  }

  /** What really happened, written in under each caption. */
  record WriteIn(Line line, List<String> fields, Optional<Caution> caution) implements Step {
    public WriteIn {
      fields = List.copyOf(fields);
    }

    @Override
    public Kind kind() {
      return Kind.RECORD;
    }
  }
}
