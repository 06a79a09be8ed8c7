package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.batch.Batch;
import jarwright.day.Days.Wish;
import jarwright.plan.Kitchen;
import jarwright.process.JarSize;
import jarwright.process.Pack;
import jarwright.process.PreparationStep;
import jarwright.process.Product;
import jarwright.process.TableRow;
import jarwright.quantity.TimeSpan;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What passes without hands stands in the day and before it, for as long as AIB 539 (2015), Guides
 * 2 to 7, prints at each product.
 */
class WaitingDaysTest {
  private static final Kitchen KITCHEN = Days.kitchen(4, Days.ZONE, Days.POT, Days.DIAL);

  /** Minutes below which hands go on with something else. */
  private static final int SHORT = 15;

  private static List<Task> tasks(DayPlan day, TaskKind kind) {
    return day.tasks().stream().filter(t -> t.kind() == kind).toList();
  }

  private static int minutes(Task task) {
    return task.end() - task.start();
  }

  /** Guide 6: bread-and-butter pickles refrigerate 3 to 4 hours before they are cooked. */
  @Test
  void breadAndButterPicklesAreChilledForThreeToFourHoursBeforeTheyAreCooked() {
    for (int jars : List.of(8, 16, 24)) {
      DayPlan day =
          Days.day(KITCHEN, Wish.of("bread-and-butter-pickles", Pack.HOT, JarSize.PINT, jars));
      Task chill = tasks(day, TaskKind.WAIT).get(0);
      assertTrue(minutes(chill) >= 180 && minutes(chill) <= 240, "" + chill);
      assertTrue(tasks(day, TaskKind.PREPARE).stream().allMatch(t -> t.end() <= chill.start()));
      assertTrue(tasks(day, TaskKind.COOK).stream().allMatch(t -> t.start() >= chill.end()));
      assertTrue(tasks(day, TaskKind.FILL).stream().allMatch(t -> t.start() >= chill.end()));
    }
  }

  /** Guide 6: quick dill pickles stand 12 hours in brine; Guide 4: dried beans soak 12 to 18. */
  @ParameterizedTest
  @CsvSource({
    "quick-fresh-pack-dill-pickles, RAW, 08:30, 12, 12",
    "beans-or-peas-dried-shelled, HOT, 09:00, 12, 18",
    "pickled-three-bean-salad, HOT, 08:00, 12, 14",
    "pickled-jalapeno-pepper-rings, HOT, 08:00, 18, 18",
  })
  void aSoakOverNightBeginsOnTheEveningBefore(
      String product, Pack pack, String start, int least, int most) {
    String canner = product.startsWith("beans") ? "dial" : "pot";
    DayPlan day = Days.day(KITCHEN, Wish.of(product, pack, JarSize.PINT, 9).in(canner).from(start));
    assertEquals(1, day.ahead().size());
    Ahead soak = day.ahead().get(0);
    Duration waits = Duration.between(soak.waits(), soak.until());
    assertFalse(waits.compareTo(Duration.ofHours(least)) < 0, "" + waits);
    assertFalse(waits.compareTo(Duration.ofHours(most)) > 0, "" + waits);
    assertEquals(Days.DATE.minusDays(1), soak.start().toLocalDate());
    assertFalse(soak.isAtNight(), "" + soak);
    assertTrue(soak.start().isBefore(soak.waits()), "hands come before the wait");
    assertFalse(soak.until().isBefore(day.start()), "the canning day begins at its start");
  }

  /** Guide 6: 3 to 4 weeks at 70 to 75 degrees F. */
  @ParameterizedTest
  @CsvSource({"sauerkraut, HOT", "dill-pickles-fermented, HOT"})
  void aFermentBeginsWeeksEarlier(String product, Pack pack) {
    Optional<TableRow> row =
        Days.PROCESSES.rows(product).stream().filter(r -> r.pack().covers(pack)).findFirst();
    Pack real = row.isPresent() ? pack : Pack.RAW;
    DayPlan day = Days.day(KITCHEN, Wish.of(product, real, JarSize.QUART, 7));
    Ahead ferment = day.ahead().get(0);
    LocalDate began = ferment.waits().toLocalDate();
    assertFalse(began.isAfter(Days.DATE.minusWeeks(3)), "" + began);
    assertFalse(began.isBefore(Days.DATE.minusWeeks(4)), "" + began);
  }

  /** Guide 6, sweet gherkins: days 1 to 4. */
  @Test
  void picklesOfSeveralDaysHaveEachOfThem() {
    DayPlan day = Days.day(KITCHEN, Wish.of("sweet-gherkin-pickles", Pack.RAW, JarSize.PINT, 7));
    assertEquals(
        List.of(3, 3, 2, 1, 1),
        day.ahead().stream()
            .map(
                a ->
                    (int)
                        Duration.between(
                                a.start().toLocalDate().atStartOfDay(), Days.DATE.atStartOfDay())
                            .toDays())
            .toList());
    Task last = tasks(day, TaskKind.WAIT).get(0);
    assertTrue(minutes(last) >= 360 && minutes(last) <= 480, "" + last);
  }

  /** Guide 6, pickle relish: 4 hours, 1 hour and 24 hours, which do not fit a morning's start. */
  @Test
  void aStartThatNobodyAskedForKeepsWorkOutOfTheNight() {
    Wish relish = Wish.of("pickle-relish", Pack.HOT, JarSize.PINT, 9);
    DayPlan free = Days.day(KITCHEN, relish);
    assertTrue(free.ahead().stream().noneMatch(Ahead::isAtNight), "" + free.ahead());
    DayPlan asked = Days.day(KITCHEN, relish.from("08:30"));
    assertEquals(LocalTime.of(8, 30), asked.start().toLocalTime());
    assertTrue(
        asked.notices().stream().anyMatch(n -> n.kind() == Notice.Kind.NIGHT_WORK),
        "work at night is told");
  }

  /** Every wait of every product, in its own order, no shorter and no longer than it is printed. */
  @Test
  void everyWaitOfEveryProductIsKept() {
    int days = 0;
    for (Product product : Days.PROCESSES.products()) {
      for (Pack pack : List.of(Pack.RAW, Pack.HOT)) {
        Optional<Wish> wish = wish(product, pack);
        if (wish.isPresent()) {
          keepsItsWaits(product, pack, Days.day(KITCHEN, wish.get()));
          days++;
        }
      }
    }
    assertTrue(days > 150, "" + days);
  }

  private static Optional<Wish> wish(Product product, Pack pack) {
    return Days.PROCESSES.rows(product.id()).stream()
        .filter(r -> r.pack().covers(pack) && r.process().isPresent())
        .filter(r -> r.band().holds(500))
        .filter(r -> r.method().id().matches("boiling-water|dial-gauge"))
        .filter(r -> r.jar() != JarSize.HALF_GALLON)
        .findFirst()
        .map(
            r ->
                Wish.of(product.id(), pack, r.jar(), 14)
                    .in(r.method().isPressure() ? "dial" : "pot"));
  }

  private static void keepsItsWaits(Product product, Pack pack, DayPlan day) {
    List<TimeSpan> printed = new ArrayList<>();
    for (PreparationStep step : Days.steps(product)) {
      if (step.isUsual() && step.isFor(pack)) {
        step.waiting()
            .map(PreparationStep.Wait::span)
            .filter(s -> s.mostMinutes() >= SHORT)
            .ifPresent(printed::add);
      }
    }
    List<Long> planned = new ArrayList<>();
    day.ahead().forEach(a -> planned.add(Duration.between(a.waits(), a.until()).toMinutes()));
    int first = day.loads().get(0).load().number();
    assertEquals(1, first);
    for (Task task : tasks(day, TaskKind.WAIT)) {
      if (task.load() == 0) {
        planned.add((long) minutes(task));
      }
    }
    assertEquals(printed.size(), planned.size(), product.id() + " " + planned);
    for (int i = 0; i < printed.size(); i++) {
      String told = product.id() + ": " + planned.get(i) + " min for " + printed.get(i);
      assertTrue(planned.get(i) >= printed.get(i).leastMinutes(), told);
      assertTrue(planned.get(i) <= printed.get(i).mostMinutes(), told);
    }
    for (int i = 1; i < day.ahead().size(); i++) {
      assertFalse(day.ahead().get(i).start().isBefore(day.ahead().get(i - 1).until()));
    }
    assertTrue(day.ahead().stream().noneMatch(Ahead::isAtNight), product.id() + day.ahead());
  }

  /** Guide 7: a recipe of a gelled spread is never doubled. */
  @Test
  void recipesOfAJamAreCookedOneAfterTheOther() {
    DayPlan day =
        Days.day(KITCHEN, Wish.of("berry-jam-no-added-pectin", Pack.HOT, JarSize.HALF_PINT, 9));
    Batch batch = day.loads().get(0).load().batch();
    int recipes = batch.formula().orElseThrow().times().orElseThrow().ceiling().intValueExact();
    List<Task> cooked = tasks(day, TaskKind.COOK);
    List<Task> filled = tasks(day, TaskKind.FILL);
    assertTrue(recipes > 1);
    assertEquals(recipes, cooked.size());
    assertEquals(recipes, filled.size(), "each is filled as soon as it is cooked");
    for (int i = 0; i < recipes; i++) {
      assertEquals(cooked.get(i).end(), filled.get(i).start());
      assertTrue(i == 0 || filled.get(i - 1).end() <= cooked.get(i).start());
    }
    Task jars = tasks(day, TaskKind.HEAT_JARS).get(0);
    assertTrue(jars.end() <= filled.get(0).start(), "jars are hot for the first of them");
    Notice notice =
        day.notices().stream()
            .filter(n -> n.kind() == Notice.Kind.RECIPES_APART)
            .findFirst()
            .orElseThrow();
    int minutes = cooked.stream().mapToInt(WaitingDaysTest::minutes).sum();
    assertEquals(List.of(recipes, minutes), notice.details());
  }

  @Test
  void foodThatIsCookedDownIsCookedOnceForTheBatchAndKeptHot() {
    DayPlan day =
        Days.day(
            Days.withPots(KITCHEN, "20 quart"),
            Wish.of("tomato-salsa-paste-tomatoes", Pack.HOT, JarSize.PINT, 14));
    assertEquals(2, day.loads().size());
    assertEquals(1, tasks(day, TaskKind.COOK).size());
    assertEquals(1, tasks(day, TaskKind.PREPARE).size());
    Task cooked = tasks(day, TaskKind.COOK).get(0);
    Task kept = tasks(day, TaskKind.KEEP_HOT).get(0);
    List<Task> filled = tasks(day, TaskKind.FILL);
    assertEquals(cooked.burners(), kept.burners(), "it stays on its burner");
    assertEquals(filled.get(0).end(), kept.start());
    assertEquals(filled.get(1).start(), kept.end());
    assertEquals(filled.get(1).end(), cooked.burnerUntil());
    assertEquals(
        List.of(Notice.Kind.USUAL_START, Notice.Kind.COOKED_ONCE),
        day.notices().stream().map(Notice::kind).toList());
  }

  /** Guide 3: thick tomato sauce is down by a half, so 7 quarts begin as 14: more than 12. */
  @Test
  void asFewPotsAreUsedAsHoldTheFoodAndNoMore() {
    Wish sauce = Wish.of("tomato-sauce-standard", Pack.HOT, JarSize.QUART, 7);
    DayPlan usual = Days.day(KITCHEN, sauce);
    assertEquals(2, tasks(usual, TaskKind.COOK).get(0).burners().size());
    DayPlan small = Days.day(KITCHEN, Wish.of("tomato-sauce-standard", Pack.HOT, JarSize.PINT, 7));
    assertEquals(1, tasks(small, TaskKind.COOK).get(0).burners().size());
    DayPlan large =
        Days.day(KITCHEN, Wish.of("tomato-sauce-standard", Pack.HOT, JarSize.QUART, 21));
    assertEquals(
        3, tasks(large, TaskKind.COOK).size(), "42 quarts in pots of 15, three quarters full");
    assertTrue(large.notices().stream().anyMatch(n -> n.kind() == Notice.Kind.COOKED_IN_GOES));
  }

  @Test
  void ownPotsAreCookedIn() {
    Kitchen large = Days.withPots(KITCHEN, "30 quart");
    Wish sauce = Wish.of("tomato-sauce-standard", Pack.HOT, JarSize.QUART, 7);
    assertEquals(1, tasks(Days.day(large, sauce), TaskKind.COOK).get(0).burners().size());
  }
}
