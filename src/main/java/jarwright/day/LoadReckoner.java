package jarwright.day;

import jarwright.batch.Batch;
import jarwright.day.LoadTasks.Part;
import jarwright.process.Pack;
import jarwright.quantity.Fraction;
import jarwright.water.Estimate;
import jarwright.water.HeatUp;
import jarwright.water.Range;
import java.util.ArrayList;
import java.util.List;

/** Works out the tasks of a load and how long each takes. */
final class LoadReckoner {
  /** Common practice: produce for a quart where the guide prints no weight. */
  private static final Fraction POUNDS_A_QUART = Fraction.of(5, 2);

  private final TaskTimes times;
  private final HeatUp heat;

  LoadReckoner(TaskTimes times, HeatUp heat) {
    this.times = times;
    this.heat = heat;
  }

  /**
   * The tasks of a load.
   *
   * @param hands pairs of hands that the batch has
   */
  LoadTasks reckon(CannerLoad load, int hands) {
    Batch batch = load.batch();
    boolean hot = batch.pack() == Pack.HOT;
    int atTheBench = Math.max(1, hands - 1);
    return new LoadTasks(
        load,
        List.of(hand(TaskKind.WASH, load, atTheBench), hand(TaskKind.PREPARE, load, atTheBench)),
        jars(load),
        List.of(hand(hot ? TaskKind.COOK : TaskKind.HEAT_LIQUID, load, 1)),
        hot,
        hand(TaskKind.FILL, load, hands),
        guess(TaskKind.PREHEAT, heat.preheat(batch.canner(), water(load), batch.pack())),
        hand(TaskKind.LOAD, load, 1),
        canning(load),
        hand(TaskKind.UNLOAD, load, 1),
        hand(TaskKind.REFILL, load, 1));
  }

  /** Heated, and boiled for the full time where they have to be sterile. */
  private List<Part> jars(CannerLoad load) {
    List<Part> parts = new ArrayList<>();
    parts.add(hand(TaskKind.HEAT_JARS, load, 1));
    load.batch()
        .sterilise()
        .ifPresent(minutes -> parts.add(fixed(TaskKind.STERILISE_JARS, minutes)));
    return parts;
  }

  private List<Part> canning(CannerLoad load) {
    Batch batch = load.batch();
    Estimate boil =
        heat.toBoil(
            batch.canner(),
            water(load),
            batch.jar(),
            load.standing(),
            batch.pack(),
            batch.kitchen().altitude());
    Part process = new Part(TaskKind.PROCESS, Minutes.Fixed.of(batch.process()), 0, 0);
    return batch.process().isPressure()
        ? List.of(
            guess(TaskKind.COME_TO_STEAM, boil),
            fixed(TaskKind.VENT, Vent.MINUTES),
            guess(TaskKind.COME_TO_PRESSURE, HeatUp.toPressure()),
            process,
            guess(TaskKind.COOL_DOWN, HeatUp.coolDown()),
            fixed(TaskKind.LID_WAIT, Rest.AFTER_PRESSURE_MINUTES))
        : List.of(guess(TaskKind.COME_TO_BOIL, boil), process, fixed(TaskKind.REST, Rest.MINUTES));
  }

  private static Range water(CannerLoad load) {
    return HeatUp.litres(load.water());
  }

  private Part hand(TaskKind kind, CannerLoad load, int hands) {
    Batch batch = load.batch();
    TaskTimes.Row row = times.row(kind, batch.product());
    int used = Math.min(hands, row.hands());
    return new Part(
        kind,
        new Minutes.Guess(
            times.estimate(kind, batch.product(), pounds(load), load.jars(), Math.max(1, used))),
        used,
        row.pots());
  }

  private static Fraction pounds(CannerLoad load) {
    Batch batch = load.batch();
    Fraction share = Fraction.of(load.jars(), batch.jars());
    return batch
        .produce()
        .map(p -> p.about().inPounds().times(share))
        .orElse(batch.jar().quarts().times(load.jars()).times(POUNDS_A_QUART));
  }

  private static Part guess(TaskKind kind, Estimate estimate) {
    return new Part(kind, new Minutes.Guess(estimate), 0, 0);
  }

  private static Part fixed(TaskKind kind, int minutes) {
    return new Part(kind, new Minutes.Fixed(minutes), 0, 0);
  }
}
