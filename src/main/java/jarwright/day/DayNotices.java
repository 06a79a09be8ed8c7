package jarwright.day;

import jarwright.batch.Batch;
import jarwright.day.Notice.Kind;
import jarwright.lot.LotCode;
import jarwright.water.HeatUp;
import jarwright.water.LeastCanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the cook should know of a day's loads before it starts, each thing once a batch. */
final class DayNotices {
  /** Common practice: a day that anybody stands through. */
  private static final int LONG_DAY_MINUTES = 14 * 60;

  private static final int MINUTES_AN_HOUR = 60;

  private DayNotices() {}

  static List<Notice> of(List<LoadTasks> loads, boolean jarsOnStove, int finish) {
    List<Notice> notices = new ArrayList<>();
    if (finish > LONG_DAY_MINUTES) {
      int hours = (finish + MINUTES_AN_HOUR - 1) / MINUTES_AN_HOUR;
      notices.add(new Notice(Kind.LONG_DAY, Optional.empty(), List.of(hours)));
    }
    if (!jarsOnStove) {
      notices.add(new Notice(Kind.JARS_HEATED_ELSEWHERE, Optional.empty(), List.of()));
    }
    for (LoadTasks tasks : loads) {
      for (Notice notice : ofLoad(tasks.load())) {
        if (!notices.contains(notice)) {
          notices.add(notice);
        }
      }
    }
    return notices;
  }

  /** What falls into the night, once a batch. */
  static List<Notice> ofAhead(List<Ahead> ahead) {
    List<Notice> notices = new ArrayList<>();
    for (Ahead one : ahead) {
      Optional<LotCode> lot = Optional.of(one.lot());
      if (one.isAtNight() && notices.stream().noneMatch(n -> n.lot().equals(lot))) {
        notices.add(
            new Notice(
                Kind.NIGHT_WORK,
                lot,
                List.of(one.start().toLocalTime(), one.start().toLocalDate())));
      }
    }
    return notices;
  }

  /** How food is cooked that is not cooked load by load. */
  static List<Notice> ofCooking(
      List<Batch> batches, List<Cookings> cookings, List<LoadTasks> tasks) {
    List<Notice> notices = new ArrayList<>();
    for (int b = 0; b < batches.size(); b++) {
      Batch batch = batches.get(b);
      Cookings of = cookings.get(b);
      List<LoadTasks> own = tasks.stream().filter(t -> t.load().batch().equals(batch)).toList();
      switch (of.manner()) {
        case LOADS -> {}
        case BATCH -> ofBatch(batch, of, own.size()).ifPresent(notices::add);
        case RECIPES -> {
          if (of.count() > 1) {
            notices.add(of(Kind.RECIPES_APART, batch, of.count(), cookingMinutes(own)));
          }
        }
      }
    }
    return notices;
  }

  private static Optional<Notice> ofBatch(Batch batch, Cookings of, int loads) {
    if (of.count() > 1) {
      return Optional.of(of(Kind.COOKED_IN_GOES, batch, of.count(), of.pots()));
    }
    if (of.pots().size() > 1) {
      return Optional.of(of(Kind.COOKED_IN_POTS, batch, of.pots().size(), of.pots()));
    }
    return loads > 1 ? Optional.of(of(Kind.COOKED_ONCE, batch, of.pots())) : Optional.empty();
  }

  private static int cookingMinutes(List<LoadTasks> loads) {
    return loads.stream()
        .flatMap(l -> l.food().stream())
        .filter(p -> p.kind() == TaskKind.COOK)
        .mapToInt(p -> p.minutes().planned())
        .sum();
  }

  private static List<Notice> ofLoad(CannerLoad load) {
    Batch batch = load.batch();
    List<Notice> notices = new ArrayList<>();
    if (HeatUp.assumesPower(batch.canner())) {
      notices.add(of(Kind.POWER_ASSUMED, batch, batch.canner().name()));
    }
    if (batch.method().isPressure() && !LeastCanner.isKnown(batch.canner())) {
      notices.add(of(Kind.CANNER_UNCOUNTED, batch, batch.canner().name(), LeastCanner.QUARTS));
    }
    if (load.belowMinimum()) {
      notices.add(of(Kind.SMALL_PRESSURE_LOAD, batch, load.jars(), load.waterJars()));
    } else if (load.waterJars() > 0) {
      notices.add(of(Kind.WATER_JARS, batch, load.waterJars()));
    }
    if (load.places().withSlimJars() > load.places().total()) {
      notices.add(
          of(Kind.SLIM_JARS_FIT, batch, load.places().total(), load.places().withSlimJars()));
    }
    load.water()
        .fold(
            covering ->
                covering.measureJars()
                    ? Optional.of(of(Kind.MEASURE_JARS, batch, covering.tallest()))
                    : Optional.<Notice>empty(),
            tooShallow -> Optional.<Notice>empty(),
            unmeasured ->
                Optional.of(
                    of(Kind.WATER_UNMEASURED, batch, String.join(", ", unmeasured.missing()))),
            pressure ->
                pressure.volumes().isEmpty()
                    ? Optional.of(of(Kind.WATER_UNMEASURED, batch, "inside-diameter"))
                    : Optional.<Notice>empty())
        .ifPresent(notices::add);
    return notices;
  }

  private static Notice of(Kind kind, Batch batch, Object... details) {
    return new Notice(kind, Optional.of(batch.lot()), List.of(details));
  }
}
