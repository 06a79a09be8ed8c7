package jarwright.batch;

import jarwright.plan.BatchPlan;
import jarwright.plan.Canner;
import jarwright.plan.Kitchen;
import jarwright.problem.Nearest;
import jarwright.problem.Problems;
import jarwright.process.Answer;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.ProcessBook;
import jarwright.process.Setting;
import jarwright.process.TableRow;
import jarwright.process.TestedProcess;
import jarwright.quantity.GaugePressure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the one canner, pack and table row for a plan, or says why there is none. */
final class Chooser {
  /** What any pressure canner can hold; below it only some tables offer a longer time. */
  private static final GaugePressure USUAL = GaugePressure.psi(10);

  private final BatchPlan plan;
  private final Kitchen kitchen;
  private final ProcessBook book;
  private final Problems problems;

  Chooser(BatchPlan plan, Kitchen kitchen, ProcessBook book, Problems problems) {
    this.plan = plan;
    this.kitchen = kitchen;
    this.book = book;
    this.problems = problems;
  }

  Optional<Choice> choose() {
    List<Canner> canners = canners();
    if (canners.isEmpty()) {
      return Optional.empty();
    }
    List<Choice> open = new ArrayList<>();
    for (Canner canner : canners) {
      for (Pack pack : packs(canner.method())) {
        lookUp(canner.method(), pack)
            .<Optional<Choice>>fold(
                found -> Optional.of(choice(canner, pack, found)),
                no -> Optional.empty(),
                gap -> Optional.empty())
            .ifPresent(open::add);
      }
    }
    if (open.isEmpty()) {
      refuse(nearest(canners));
      return Optional.empty();
    }
    return one(open).flatMap(this::atPressure);
  }

  private Choice choice(Canner canner, Pack pack, Answer.Found found) {
    List<TableRow> byPressure =
        found.rows().stream().sorted(Comparator.comparing(Chooser::pressure)).toList();
    return new Choice(canner, pack, byPressure.get(0), byPressure, found.printedFor());
  }

  /** The canners that the plan leaves possible; a problem is told where there are none. */
  private List<Canner> canners() {
    if (plan.canner().isPresent()) {
      String name = plan.canner().get();
      Optional<Canner> named = kitchen.canner(name);
      if (named.isEmpty()) {
        List<String> known = kitchen.canners().stream().map(Canner::name).toList();
        tell("canner", "the kitchen has no canner \"" + name + "\"", Nearest.remedy(name, known));
        return List.of();
      }
      if (plan.method().isPresent() && plan.method().get() != named.get().method()) {
        tell(
            "canner",
            "\""
                + name
                + "\" is a "
                + named.get().method()
                + " canner, but the method is "
                + plan.method().get(),
            "name a " + plan.method().get() + " canner, or leave the method out");
        return List.of();
      }
      return List.of(named.get());
    }
    List<Canner> fitting = plan.method().map(kitchen::cannersFor).orElse(kitchen.canners());
    if (fitting.isEmpty()) {
      tell(
          "method",
          plan.method()
              .map(m -> "the kitchen has no " + m + " canner")
              .orElse("the kitchen has no canner"),
          "describe one under kitchen, canners");
    }
    return fitting;
  }

  private List<Pack> packs(Method method) {
    if (plan.pack().isPresent()) {
      return List.of(plan.pack().get());
    }
    return List.of(Pack.RAW, Pack.HOT).stream()
        .filter(
            p ->
                book.rows(plan.product().id()).stream()
                    .anyMatch(r -> r.method() == method && r.pack().covers(p)))
        .toList();
  }

  private Answer lookUp(Method method, Pack pack) {
    return book.lookUp(new Setting(plan.product(), method, pack, plan.jar(), kitchen.altitude()));
  }

  /** The only choice, or a problem that names what is still open. */
  private Optional<Choice> one(List<Choice> open) {
    if (open.stream().map(Choice::pack).distinct().count() > 1) {
      tell("pack", "the plan names no pack, and both are tested", "add pack: raw or pack: hot");
      return Optional.empty();
    }
    if (open.size() > 1) {
      String names =
          open.stream()
              .map(c -> c.canner().name() + " (" + c.canner().method() + ")")
              .collect(Collectors.joining(", "));
      tell("canner", "more than one canner fits: " + names, "name one with canner:");
      return Optional.empty();
    }
    return Optional.of(open.get(0));
  }

  private Optional<Choice> atPressure(Choice choice) {
    List<TableRow> offered = choice.offered();
    if (!choice.canner().method().isPressure()) {
      if (plan.pressure().isPresent()) {
        tell("pressure", "a boiling-water canner holds no pressure", "leave pressure: out");
        return Optional.empty();
      }
      return Optional.of(choice);
    }
    List<TableRow> held =
        offered.stream().filter(r -> choice.canner().canHold(pressure(r))).toList();
    Optional<TableRow> row =
        plan.pressure().isPresent()
            ? held.stream()
                .filter(r -> pressure(r).compareTo(plan.pressure().get()) == 0)
                .findFirst()
            : held.stream()
                .filter(r -> pressure(r).compareTo(USUAL) >= 0)
                .findFirst()
                .or(() -> held.stream().findFirst());
    if (row.isEmpty()) {
      String asked =
          plan.pressure()
              .map(p -> p + " is not a tested pressure here")
              .orElse("\"" + choice.canner().name() + "\" holds none of the tested pressures");
      tell("pressure", asked, "tested: " + pairs(offered));
      return Optional.empty();
    }
    return row.map(
        r -> new Choice(choice.canner(), choice.pack(), r, offered, choice.printedFor()));
  }

  /** Of the methods at hand the first that the product has a table for, else the first. */
  private Method nearest(List<Canner> canners) {
    List<Method> methods = canners.stream().map(Canner::method).toList();
    return methods.stream()
        .filter(m -> book.rows(plan.product().id()).stream().anyMatch(r -> r.method() == m))
        .findFirst()
        .orElse(methods.get(0));
  }

  private void refuse(Method method) {
    Pack pack = plan.pack().orElse(packs(method).stream().findFirst().orElse(Pack.HOT));
    new Refusal(plan, kitchen, book, problems).tell(method, pack, lookUp(method, pack));
  }

  private void tell(String key, String what, String remedy) {
    problems.add(plan.placeOf(key), what, remedy);
  }

  private static String pairs(List<TableRow> rows) {
    return rows.stream()
        .map(
            r ->
                pressure(r)
                    + " for "
                    + r.process().map(TestedProcess::minutes).orElseThrow()
                    + " min")
        .collect(Collectors.joining(", "));
  }

  private static GaugePressure pressure(TableRow row) {
    return row.process().flatMap(TestedProcess::pressure).orElse(GaugePressure.psi(0));
  }
}
