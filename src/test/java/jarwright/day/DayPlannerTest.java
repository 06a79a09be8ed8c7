package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.Days.Wish;
import jarwright.plan.Canner;
import jarwright.plan.Kitchen;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

class DayPlannerTest {
  private static final Kitchen KITCHEN =
      Days.kitchen(0, Days.ZONE, Days.POT, Days.SECOND_POT, Days.DIAL);

  private static List<Notice.Kind> notices(DayPlan day) {
    return day.notices().stream().map(Notice::kind).toList();
  }

  private static Task only(DayPlan day, TaskKind kind) {
    List<Task> found = day.tasks().stream().filter(t -> t.kind() == kind).toList();
    assertEquals(1, found.size(), kind.toString());
    return found.get(0);
  }

  @Test
  void oneLoadRunsFromWashingToTheBenchWithoutAPause() {
    DayPlan day = Days.day(KITCHEN, Wish.plums(7).from("09:00"));
    assertEquals(LocalTime.of(9, 0), day.start().toLocalTime());
    assertEquals(0, only(day, TaskKind.WASH).start());
    assertEquals(only(day, TaskKind.WASH).end(), only(day, TaskKind.PREPARE).start());
    assertEquals(only(day, TaskKind.HEAT_JARS).end(), only(day, TaskKind.FILL).start());
    assertEquals(only(day, TaskKind.HEAT_LIQUID).end(), only(day, TaskKind.FILL).start());
    assertEquals(only(day, TaskKind.FILL).end(), only(day, TaskKind.LOAD).start());
    assertEquals(only(day, TaskKind.PREHEAT).end(), only(day, TaskKind.LOAD).start());
    assertEquals(only(day, TaskKind.LOAD).end(), only(day, TaskKind.COME_TO_BOIL).start());
    assertEquals(only(day, TaskKind.COME_TO_BOIL).end(), only(day, TaskKind.PROCESS).start());
    assertEquals(only(day, TaskKind.PROCESS).end(), only(day, TaskKind.REST).start());
    assertEquals(5, only(day, TaskKind.REST).minutes().planned());
    assertEquals(day.finish(), only(day, TaskKind.UNLOAD).end());
    assertTrue(day.proven() && day.gap() == 0 && day.waiting() == 0);
  }

  /** AIB 539 (2015) Guide 1: vent 10 minutes; 10 minutes after the weight is off. */
  @Test
  void aPressureLoadVentsAndCoolsByTheBook() {
    DayPlan day = Days.day(KITCHEN, Wish.beans(7));
    assertEquals(new Minutes.Fixed(10), only(day, TaskKind.VENT).minutes());
    assertEquals(new Minutes.Fixed(10), only(day, TaskKind.LID_WAIT).minutes());
    assertFalse(only(day, TaskKind.COOL_DOWN).isExact());
    assertEquals(only(day, TaskKind.VENT).end(), only(day, TaskKind.COME_TO_PRESSURE).start());
    assertEquals(only(day, TaskKind.COME_TO_PRESSURE).end(), only(day, TaskKind.PROCESS).start());
    assertEquals(25, only(day, TaskKind.PROCESS).minutes().planned());
  }

  @Test
  void jarsForAShortProcessAreBoiledFirst() {
    String id =
        Days.PROCESSES.products().stream()
            .filter(p -> p.category().startsWith("jelly-no"))
            .findFirst()
            .orElseThrow()
            .id();
    Wish wish = new Wish(id, Pack.HOT, JarSize.HALF_PINT, 5, "pot", Days.DATE, "", "", 1);
    DayPlan day = Days.day(KITCHEN, wish);
    Task boil = only(day, TaskKind.STERILISE_JARS);
    assertEquals(new Minutes.Fixed(10), boil.minutes());
    assertEquals(only(day, TaskKind.HEAT_JARS).burners(), boil.burners());
    Task fill =
        day.tasks().stream().filter(t -> t.kind() == TaskKind.FILL).findFirst().orElseThrow();
    assertEquals(fill.start(), boil.end());
  }

  @Test
  void threeLoadsOfTwoBatchesShareOnePot() {
    DayPlan day = Days.day(KITCHEN, Wish.plums(14), Wish.tomatoes(9));
    assertEquals(3, day.loads().size());
    assertEquals(23, day.jars());
    assertEquals(1, day.tasks().stream().filter(t -> t.kind() == TaskKind.PREHEAT).count());
    assertEquals(2, day.tasks().stream().filter(t -> t.kind() == TaskKind.REFILL).count());
    assertTrue(day.proven());
  }

  @Test
  void twoPotsAreDoneSoonerThanOne() {
    DayPlan one = Days.day(KITCHEN, Wish.plums(14), Wish.tomatoes(9));
    DayPlan two = Days.day(KITCHEN, Wish.plums(14), Wish.tomatoes(9).in("second pot"));
    assertTrue(two.finish() < one.finish());
    assertEquals(List.of("pot", "second pot"), two.canners());
  }

  @Test
  void thirtyLoadsArePlannedAndTheGapIsTold() {
    DayPlan day = Days.day(KITCHEN, Wish.plums(105).with(1), Wish.tomatoes(135).with(1));
    assertEquals(30, day.loads().size());
    assertTrue(day.gap() >= 0 && day.gap() * 20 <= day.finish(), "gap " + day.gap());
    assertTrue(notices(day).contains(Notice.Kind.LONG_DAY));
    assertTrue(notices(day).contains(Notice.Kind.OVER_MIDNIGHT));
  }

  @Test
  void withoutAnyTimeTheUsualStartIsTakenAndTold() {
    DayPlan day = Days.day(KITCHEN, Wish.plums(7));
    assertEquals(LocalTime.of(8, 30), day.start().toLocalTime());
    assertEquals(List.of(Notice.Kind.USUAL_START), notices(day));
  }

  @Test
  void aFinishIsReckonedBackTo() {
    DayPlan day = Days.day(KITCHEN, Wish.plums(14).by("17:00"), Wish.tomatoes(9));
    DayPlan both = Days.day(KITCHEN, Wish.plums(14).by("17:00"), Wish.tomatoes(9).by("16:00"));
    ZonedDateTime plumsOut = day.loads().get(1).out();
    assertEquals(LocalTime.of(17, 0), plumsOut.toLocalTime());
    assertFalse(both.loads().get(1).out().toLocalTime().isAfter(LocalTime.of(17, 0)));
    assertFalse(both.loads().get(2).out().toLocalTime().isAfter(LocalTime.of(16, 0)));
    assertFalse(notices(both).contains(Notice.Kind.LATE));
  }

  @Test
  void anEarlyFinishStartsTheDayBefore() {
    DayPlan day = Days.day(KITCHEN, Wish.plums(14).by("02:00"));
    assertEquals(Days.DATE.minusDays(1), day.start().toLocalDate());
    assertEquals(LocalTime.of(2, 0), day.at(day.finish()).toLocalTime());
    assertTrue(notices(day).contains(Notice.Kind.STARTS_DAY_BEFORE));
  }

  @Test
  void aLateStartRunsPastMidnightAndCoolsIntoTheNextDay() {
    DayPlan day = Days.day(KITCHEN, Wish.plums(14).from("21:00"));
    PlannedLoad last = day.loads().get(1);
    assertEquals(Days.DATE.plusDays(1), last.out().toLocalDate());
    assertTrue(notices(day).contains(Notice.Kind.OVER_MIDNIGHT));
    assertEquals(Duration.ofHours(12), Duration.between(last.out(), last.testFrom()));
    // AIB 539 (2015) Guide 1: within 24 hours, counted as for the verdict, from the end of the
    // clock:
    // 5 minutes of rest and the lifting out lie between.
    Task process =
        day.tasks().stream()
            .filter(t -> t.load() == 1 && t.kind() == TaskKind.PROCESS)
            .findFirst()
            .orElseThrow();
    assertEquals(day.at(process.end()).plusHours(24), last.testBy());
  }

  /** Chicago, 8 March 2026: 02:00 to 03:00 does not exist; 1 November: 01:00 to 02:00 twice. */
  @Test
  void aClockChangeMovesTheClockAndNotTheWork() {
    LocalDate spring = LocalDate.of(2026, 3, 8);
    DayPlan day = Days.day(KITCHEN, Wish.plums(7).on(spring).from("00:30"));
    DayPlan plain = Days.day(KITCHEN, Wish.plums(7).from("00:30"));
    assertEquals(plain.finish(), day.finish());
    assertEquals(
        plain.at(plain.finish()).toLocalTime().plusHours(1), day.at(day.finish()).toLocalTime());
    LocalDate autumn = LocalDate.of(2026, 11, 1);
    DayPlan back = Days.day(KITCHEN, Wish.plums(7).on(autumn).from("00:30"));
    assertEquals(
        plain.at(plain.finish()).toLocalTime().minusHours(1), back.at(back.finish()).toLocalTime());
    DayPlan by = Days.day(KITCHEN, Wish.plums(7).on(spring).by("04:00"));
    assertEquals(LocalTime.of(4, 0), by.at(by.finish()).toLocalTime());
    assertEquals(by.finish(), Duration.between(by.start(), by.at(by.finish())).toMinutes());
  }

  @Test
  void aTimeThatTheClocksSkipIsRefused() {
    LocalDate spring = LocalDate.of(2026, 3, 8);
    String why =
        " does not exist on 2026-03-08: the clocks go forward from 02:00 to 03:00"
            + " (America/Chicago). write 01:59 or earlier, or 03:00 or later.";
    assertEquals(
        List.of("plan.yaml:1:1: start: 02:00" + why),
        Days.refusal(KITCHEN, Wish.plums(7).on(spring).from("02:00")));
    assertEquals(
        List.of("plan.yaml:1:30: finish: 02:59" + why),
        Days.refusal(KITCHEN, Wish.plums(7).on(spring).by("02:59")));
    assertEquals(
        LocalTime.of(3, 0),
        Days.day(KITCHEN, Wish.plums(7).on(spring).from("03:00")).start().toLocalTime());
    assertEquals(
        LocalTime.of(1, 59),
        Days.day(KITCHEN, Wish.plums(7).on(spring).from("01:59")).start().toLocalTime());
    LocalDate autumn = LocalDate.of(2026, 11, 1);
    assertEquals(
        LocalTime.of(1, 30),
        Days.day(KITCHEN, Wish.plums(7).on(autumn).from("01:30")).start().toLocalTime());
  }

  @Test
  void aKitchenWithoutZoneTakesTheOneGiven() {
    Kitchen nowhere = Days.kitchen(4, null, Days.POT);
    assertEquals(ZoneId.of("UTC"), Days.day(nowhere, Wish.plums(7)).start().getZone());
  }

  @Test
  void aBatchStartsNoSoonerThanItsOwnTime() {
    DayPlan day =
        Days.day(
            KITCHEN, Wish.plums(7).from("08:00"), Wish.tomatoes(9).from("10:00").in("second pot"));
    for (Task task : day.tasks()) {
      if (task.load() == 1) {
        assertFalse(day.at(task.start()).toLocalTime().isBefore(LocalTime.of(10, 0)), "" + task);
      }
    }
  }

  @Test
  void lateForItsFinishIsTold() {
    DayPlan day = Days.day(KITCHEN, Wish.plums(14).from("09:00").by("09:30"));
    assertTrue(notices(day).contains(Notice.Kind.LATE));
  }

  @Test
  void batchesOfDifferentDatesAreDifferentDays() {
    List<DayPlan> days =
        Days.days(KITCHEN, Wish.plums(7).on(Days.DATE.plusDays(1)), Wish.tomatoes(9));
    assertEquals(
        List.of(Days.DATE, Days.DATE.plusDays(1)), days.stream().map(DayPlan::date).toList());
  }

  @Test
  void moreHandsAreDoneNoLaterAndRushesAreTold() {
    DayPlan one = Days.day(KITCHEN, Wish.plums(14).with(1));
    DayPlan three = Days.day(KITCHEN, Wish.plums(14).with(3));
    assertTrue(three.finish() < one.finish());
    assertEquals(List.of(), one.rushes());
    assertFalse(three.rushes().isEmpty());
    assertEquals(3, three.hands());
  }

  @Test
  void missingPowerWidensTheFinishAndIsTold() {
    Canner unknown = Days.canner("pot", Method.BOILING_WATER, "33 cm", "30 cm", 0);
    DayPlan wide = Days.day(Days.kitchen(4, Days.ZONE, unknown), Wish.plums(7));
    DayPlan known = Days.day(KITCHEN, Wish.plums(7));
    assertTrue(notices(wide).contains(Notice.Kind.POWER_ASSUMED));
    assertTrue(wide.finishRange().max() > known.finishRange().max());
    assertTrue(wide.finishRange().min() < known.finishRange().min());
    assertTrue(known.finishRange().min() <= known.finish());
    assertTrue(known.finishRange().max() >= known.finish());
  }

  @Test
  void twoBurnersLeaveNoneForJars() {
    DayPlan day = Days.day(Days.kitchen(2, Days.ZONE, Days.POT), Wish.plums(14));
    assertTrue(notices(day).contains(Notice.Kind.JARS_HEATED_ELSEWHERE));
    for (Task task : day.tasks()) {
      assertTrue(task.kind() != TaskKind.HEAT_JARS || task.burners().isEmpty());
    }
  }

  @Test
  void badPlansAreRefusedWithPlaceAndRemedy() {
    assertEquals(
        List.of(
            "plan.yaml:1:20: with 0 hands nobody does the work. give the number of people working,"
                + " 1 or more."),
        Days.refusal(KITCHEN, Wish.plums(7).with(0)));
    assertEquals(
        List.of(
            "plan.yaml:1:30: the batch is to be done by 09:00 and starts at 10:00. give a later"
                + " finish, or only one of the two: work that runs past midnight is planned from"
                + " its start alone."),
        Days.refusal(KITCHEN, Wish.plums(7).from("10:00").by("09:00")));
    assertEquals(
        List.of(
            "plan.yaml:1:1: the day's canners and a pot need 3 burners, and the kitchen has 2. use"
                + " fewer canners on this day, or give the batches different dates."),
        Days.refusal(
            Days.kitchen(2, Days.ZONE, Days.POT, Days.SECOND_POT),
            Wish.plums(7),
            Wish.tomatoes(9).in("second pot")));
  }
}
