package jarwright.day;

import java.util.Locale;

/** What is done to a load, in the order in which it is done. */
public enum TaskKind {
  WASH(Where.SINK),
  PREPARE(Where.BENCH),
  /** Work by hand between waits: drained, rinsed, covered again. */
  TEND(Where.BENCH),
  /** Produce that is cooked before it is cut or skinned. */
  PRECOOK(Where.STOVE),
  /** Time that passes without hands: a soak, a chill, a stand. */
  WAIT(Where.BENCH),
  PREHEAT(Where.CANNER),
  HEAT_JARS(Where.STOVE),
  STERILISE_JARS(Where.STOVE),
  HEAT_LIQUID(Where.STOVE),
  COOK(Where.STOVE),
  /** Food that was cooked once for the batch, hot until the next load is filled. */
  KEEP_HOT(Where.STOVE),
  FILL(Where.BENCH),
  LOAD(Where.CANNER),
  COME_TO_BOIL(Where.CANNER),
  COME_TO_STEAM(Where.CANNER),
  VENT(Where.CANNER),
  COME_TO_PRESSURE(Where.CANNER),
  /** The tested process: the only one whose minutes come from the process tables. */
  PROCESS(Where.CANNER),
  REST(Where.CANNER),
  COOL_DOWN(Where.CANNER),
  LID_WAIT(Where.CANNER),
  UNLOAD(Where.CANNER),
  /** Water topped up and brought to the next load's preheat. */
  REFILL(Where.CANNER);

  private final Where where;

  TaskKind(Where where) {
    this.where = where;
  }

  /** Where in the kitchen it is done. */
  public enum Where {
    SINK,
    BENCH,
    STOVE,
    CANNER
  }

  public Where where() {
    return where;
  }

  /** Whether a clock is set when it starts, and its end is not a guess. */
  public boolean startsClock() {
    return this == PROCESS || this == VENT || this == STERILISE_JARS;
  }

  /** Whether the food itself is worked on, or has to be there. */
  boolean isWithFood() {
    return switch (this) {
      case WASH, PREPARE, TEND, PRECOOK, WAIT, COOK, FILL -> true;
      default -> false;
    };
  }

  /** Whether its length is a matter of the household's hands and stove, so that it may be told. */
  public boolean isHandWork() {
    return switch (this) {
      case WASH, PREPARE, TEND, HEAT_JARS, HEAT_LIQUID, COOK, FILL, LOAD, UNLOAD, REFILL -> true;
      case PRECOOK,
          WAIT,
          KEEP_HOT,
          PREHEAT,
          STERILISE_JARS,
          COME_TO_BOIL,
          COME_TO_STEAM,
          VENT,
          COME_TO_PRESSURE,
          PROCESS,
          REST,
          COOL_DOWN,
          LID_WAIT ->
          false;
    };
  }

  /** As data files and other programs write it. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
