package jarwright.day;

import jarwright.batch.Batch;
import jarwright.batch.BatchReckoner;
import jarwright.files.DayTables;
import jarwright.files.ProcessTables;
import jarwright.files.StepTables;
import jarwright.lot.LotCode;
import jarwright.plan.Amount;
import jarwright.plan.BatchPlan;
import jarwright.plan.Canner;
import jarwright.plan.Energy;
import jarwright.plan.Kitchen;
import jarwright.plan.Paper;
import jarwright.problem.Place;
import jarwright.problem.Problem;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.PreparationStep;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.quantity.Altitude;
import jarwright.quantity.Fraction;
import jarwright.quantity.Length;
import jarwright.quantity.Units;
import jarwright.quantity.Volume;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Invented kitchens and batches to plan days with. */
final class Days {
  static final LocalDate DATE = LocalDate.of(2026, 8, 24);
  static final ZoneId ZONE = ZoneId.of("America/Chicago");
  static final ProcessBook PROCESSES;
  static final DayBook BOOK;
  private static final Map<String, List<PreparationStep>> STEPS = new HashMap<>();

  static {
    try {
      PROCESSES = ProcessTables.ofProgram().book();
      BOOK = DayTables.read();
    } catch (IOException | Refused e) {
      throw new AssertionError(e);
    }
  }

  static final Canner POT = canner("pot", Method.BOILING_WATER, "33 cm", "30 cm", 2_400);
  static final Canner SECOND_POT =
      canner("second pot", Method.BOILING_WATER, "33 cm", "30 cm", 2_400);
  static final Canner DIAL = canner("dial", Method.DIAL_GAUGE, "12 in", "11 in", 2_400);

  private Days() {}

  static List<PreparationStep> steps(Product product) {
    return steps(product, "en");
  }

  static List<PreparationStep> steps(Product product, String language) {
    return STEPS.computeIfAbsent(
        product.id() + " " + language,
        key -> {
          try {
            return StepTables.read(product, language);
          } catch (IOException | Refused e) {
            throw new AssertionError(e);
          }
        });
  }

  static Canner canner(String name, Method method, String across, String deep, int watts) {
    return new Canner(
        name,
        method,
        across.isEmpty() ? Optional.empty() : Optional.of(Length.parse(across)),
        deep.isEmpty() ? Optional.empty() : Optional.of(Length.parse(deep)),
        Optional.of(Length.parse("15 mm")),
        watts == 0 ? OptionalInt.empty() : OptionalInt.of(watts),
        watts == 0 ? Optional.empty() : Optional.of(Energy.ELECTRIC),
        Map.of(),
        List.of());
  }

  static Kitchen kitchen(int burners, ZoneId zone, Canner... canners) {
    Length none = Length.millimetres(0);
    return new Kitchen(
        "",
        Altitude.feet(500),
        Paper.LETTER,
        Units.BOTH,
        "en",
        List.of(canners),
        Optional.empty(),
        none,
        none,
        Fraction.ONE,
        Optional.empty(),
        12,
        burners == 0 ? OptionalInt.empty() : OptionalInt.of(burners),
        Optional.ofNullable(zone));
  }

  static Kitchen withPots(Kitchen k, String... pots) {
    return new Kitchen(
        k.household(),
        k.altitude(),
        k.paper(),
        k.units(),
        k.language(),
        k.canners(),
        k.labelStock(),
        k.offsetRight(),
        k.offsetDown(),
        k.sheetScale(),
        k.link(),
        k.monthsToUseBy(),
        k.burners(),
        k.zone(),
        k.clock(),
        Stream.of(pots).map(Volume::parse).toList(),
        k.times());
  }

  /** A batch before it is worked out; a small builder, for batches differ in one or two things. */
  record Wish(
      String product,
      Pack pack,
      JarSize jar,
      int jars,
      String canner,
      LocalDate date,
      String start,
      String finish,
      int hands) {
    static Wish plums(int jars) {
      return new Wish(
          "plums-halved-or-whole", Pack.RAW, JarSize.QUART, jars, "pot", DATE, "", "", 2);
    }

    static Wish tomatoes(int jars) {
      return new Wish(
          "tomatoes-whole-in-water", Pack.HOT, JarSize.PINT, jars, "pot", DATE, "", "", 2);
    }

    static Wish beans(int jars) {
      return new Wish("beans-snap-italian", Pack.HOT, JarSize.QUART, jars, "dial", DATE, "", "", 2);
    }

    static Wish of(String product, Pack pack, JarSize jar, int jars) {
      return new Wish(product, pack, jar, jars, "pot", DATE, "", "", 2);
    }

    Wish from(String time) {
      return new Wish(product, pack, jar, jars, canner, date, time, finish, hands);
    }

    Wish by(String time) {
      return new Wish(product, pack, jar, jars, canner, date, start, time, hands);
    }

    Wish on(LocalDate day) {
      return new Wish(product, pack, jar, jars, canner, day, start, finish, hands);
    }

    Wish with(int people) {
      return new Wish(product, pack, jar, jars, canner, date, start, finish, people);
    }

    Wish in(String pot) {
      return new Wish(product, pack, jar, jars, pot, date, start, finish, hands);
    }

    Wish of(JarSize size) {
      return new Wish(product, pack, size, jars, canner, date, start, finish, hands);
    }
  }

  static List<Batch> batches(Kitchen kitchen, Wish... wishes) {
    List<Batch> batches = new ArrayList<>();
    Problems problems = new Problems();
    for (Wish wish : wishes) {
      LotCode lot = new LotCode(wish.date(), (char) ('A' + batches.size()));
      new BatchReckoner(PROCESSES, kitchen)
          .reckon(plan(wish, batches.size() + 1), lot, problems)
          .ifPresent(batches::add);
    }
    if (!problems.isEmpty()) {
      throw new AssertionError(problems.list());
    }
    return batches;
  }

  private static BatchPlan plan(Wish wish, int position) {
    Place here = new Place("plan.yaml", position, 1, "");
    return new BatchPlan(
        "plan",
        position,
        Map.of(
            "", here,
            "canner", new Place("plan.yaml", position, 10, ""),
            "hands", new Place("plan.yaml", position, 20, ""),
            "finish", new Place("plan.yaml", position, 30, "")),
        PROCESSES.product(wish.product()).orElseThrow(),
        Optional.of(wish.pack()),
        wish.jar(),
        new Amount.Jars(wish.jars()),
        Optional.empty(),
        Optional.empty(),
        PROCESSES.product(wish.product()).orElseThrow().acid().choices().stream().findFirst(),
        Optional.empty(),
        Optional.empty(),
        wish.date(),
        time(wish.start()),
        time(wish.finish()),
        OptionalInt.of(wish.hands()),
        Optional.of(wish.canner()),
        new BatchPlan.Notes("", "", "", ""));
  }

  private static Optional<LocalTime> time(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(LocalTime.parse(text));
  }

  /** The days of batches that can be planned. */
  static List<DayPlan> days(Kitchen kitchen, Wish... wishes) {
    Problems problems = new Problems();
    List<DayPlan> days =
        new DayPlanner(BOOK, Days::steps)
            .plan(batches(kitchen, wishes), ZoneId.of("UTC"), problems);
    if (!problems.isEmpty()) {
      throw new AssertionError(problems.list());
    }
    return days;
  }

  static DayPlan day(Kitchen kitchen, Wish... wishes) {
    return days(kitchen, wishes).get(0);
  }

  /** Why batches cannot be planned. */
  static List<String> refusal(Kitchen kitchen, Wish... wishes) {
    Problems problems = new Problems();
    List<DayPlan> days =
        new DayPlanner(BOOK, Days::steps)
            .plan(batches(kitchen, wishes), ZoneId.of("UTC"), problems);
    if (!days.isEmpty()) {
      throw new AssertionError("planned");
    }
    return problems.list().stream().map(Problem::text).toList();
  }
}
