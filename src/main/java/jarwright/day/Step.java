package jarwright.day;

import java.util.List;
import java.util.Optional;

/** One line of a checklist, in the words of its print-out: verb first, one action. */
public sealed interface Step {
  String text();

  Optional<Caution> caution();

  /** How the line hangs in the work. */
  Kind kind();

  /** The figure to act on, set big; empty where there is none. */
  default Optional<String> figure() {
    return Optional.empty();
  }

  /** Boxes to tick one by one, once for each jar; 0 for the ordinary single box. */
  default int tally() {
    return 0;
  }

  /** Captions of fields to write in. */
  default List<String> fields() {
    return List.of();
  }

  /** What a line is, for the one who draws it. */
  enum Kind {
    ACTION,
    TALLY,
    WAIT,
    CLOCK,
    RECORD
  }

  /** Something to do with the hands. */
  record Action(String text, Optional<String> figure, Optional<Caution> caution) implements Step {
    @Override
    public Kind kind() {
      return Kind.ACTION;
    }
  }

  /** Something to do to each jar, ticked jar by jar so that none is missed. */
  record PerJar(String text, Optional<String> figure, int tally, Optional<Caution> caution)
      implements Step {
    @Override
    public Kind kind() {
      return Kind.TALLY;
    }
  }

  /** Time that has to run before the next line. */
  record Wait(String text, Optional<String> figure, Optional<Caution> caution) implements Step {
    @Override
    public Kind kind() {
      return Kind.WAIT;
    }
  }

  /**
   * The process itself: the clock starts here, and every load writes its own times.
   *
   * @param fields captions of the write-in fields of each load
   * @param loads how many loads the canner is filled for
   */
  record Clock(
      String text,
      Optional<String> figure,
      List<String> fields,
      int loads,
      Optional<Caution> caution)
      implements Step {
    @Override
    public Kind kind() {
      return Kind.CLOCK;
    }
  }

  /** What really happened, written in. */
  record WriteIn(String text, List<String> fields, Optional<Caution> caution) implements Step {
    @Override
    public Kind kind() {
      return Kind.RECORD;
    }
  }
}
