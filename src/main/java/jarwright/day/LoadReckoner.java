package jarwright.day;

import jarwright.batch.Batch;
import jarwright.day.Cookings.Manner;
import jarwright.day.LoadTasks.Part;
import jarwright.day.TaskTimes.Amount;
import jarwright.process.Pack;
import jarwright.quantity.Fraction;
import jarwright.water.Estimate;
import jarwright.water.HeatUp;
import jarwright.water.Range;
import java.util.ArrayList;
import java.util.List;

/** Works out the tasks of a batch's loads and how long each takes. */
final class LoadReckoner {
  private final TaskTimes times;
  private final HeatUp heat;

  LoadReckoner(TaskTimes times, HeatUp heat) {
    this.times = times;
    this.heat = heat;
  }

  /** How often a batch is cooked, and in what. */
  Cookings cookings(Batch batch, int loads, Pots pots) {
    return Cookings.of(batch, loads, times.row(TaskKind.COOK, batch.product()), pots);
  }

  /**
   * The tasks of a batch's loads.
   *
   * @param hands pairs of hands that the batch has
   */
  List<LoadTasks> reckon(List<CannerLoad> loads, Making making, Cookings cookings, int hands) {
    List<LoadTasks> tasks = new ArrayList<>();
    int before = 0;
    for (CannerLoad load : loads) {
      int goes = cookings.before(before, load.jars(), load.batch().jars());
      tasks.add(reckon(load, making, cookings, goes, hands));
      before += load.jars();
    }
    return List.copyOf(tasks);
  }

  private LoadTasks reckon(CannerLoad load, Making making, Cookings cookings, int goes, int hands) {
    Batch batch = load.batch();
    boolean hot = batch.pack() == Pack.HOT;
    boolean first = load.number() == 1;
    FoodReckoner food = new FoodReckoner(times, batch, making, hands);
    List<Part> preparing = food.preparing(prepared(load, making, cookings, goes));
    boolean soaks = making.soaksLast() && !preparing.isEmpty();
    int cut = hot && soaks ? afterLastWait(preparing) : preparing.size();
    List<Part> heating = new ArrayList<>(preparing.subList(cut, preparing.size()));
    heating.addAll(hot ? food.cooking(cookings, goes, first, load) : food.liquid(load, first));
    boolean apart = cookings.manner() == Manner.RECIPES && goes > 1;
    int each = FoodReckoner.perRecipe(load.jars(), Math.max(1, goes));
    int last = apart ? Math.max(1, load.jars() - (goes - 1) * each) : load.jars();
    return new LoadTasks(
        load,
        preparing.subList(0, cut),
        soaks ? making.leeway() : LoadWork.ANY_TIME,
        jars(load),
        heating,
        hot || making.standsAgain(),
        goes == 0 ? cookings.pots().size() : 0,
        food.filling(last),
        guess(TaskKind.PREHEAT, heat.preheat(batch.canner(), water(load), batch.pack())),
        hand(TaskKind.LOAD, load, 1),
        canning(load),
        hand(TaskKind.UNLOAD, load, 1),
        hand(TaskKind.REFILL, load, 1));
  }

  /** Food that has soaked is drained when it is wanted, not before. */
  private static int afterLastWait(List<Part> parts) {
    int after = 0;
    for (int i = 0; i < parts.size(); i++) {
      after = parts.get(i).kind() == TaskKind.WAIT ? i + 1 : after;
    }
    return after;
  }

  /** Which part of the batch is prepared for the load: all of it where it soaks together. */
  private static Fraction prepared(CannerLoad load, Making making, Cookings cookings, int goes) {
    if (making.hasSoak()) {
      return load.number() == 1 ? Fraction.ONE : Fraction.ZERO;
    }
    return cookings.manner() == Manner.LOADS
        ? Fraction.of(load.jars(), load.batch().jars())
        : Fraction.of(goes, cookings.count());
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
    Amount amount = new Amount(Fraction.ZERO, load.jars(), Fraction.ZERO);
    return new Part(
        kind,
        new Minutes.Guess(times.estimate(kind, batch.product(), amount, Math.max(1, used))),
        used,
        row.pots());
  }

  private static Part guess(TaskKind kind, Estimate estimate) {
    return new Part(kind, new Minutes.Guess(estimate), 0, 0);
  }

  private static Part fixed(TaskKind kind, int minutes) {
    return new Part(kind, new Minutes.Fixed(minutes), 0, 0);
  }
}
