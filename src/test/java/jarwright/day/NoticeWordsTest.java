package jarwright.day;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.Days.Wish;
import jarwright.files.BuyingTables;
import jarwright.page.PaperSize;
import jarwright.plan.Canner;
import jarwright.plan.Kitchen;
import jarwright.process.Method;
import jarwright.process.Product;
import jarwright.render.Printer;
import jarwright.render.WordBundle;
import java.io.ByteArrayOutputStream;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a day's notices say, in the languages there are. */
class NoticeWordsTest {
  private static final Kitchen KITCHEN =
      Days.kitchen(4, Days.ZONE, Days.POT, Days.SECOND_POT, Days.DIAL);

  private static final Canner UNKNOWN = Days.canner("dial", Method.DIAL_GAUGE, "", "", 0);

  private static List<DayPlan> days() {
    Kitchen berlin = Days.kitchen(4, ZoneId.of("Europe/Berlin"), Days.POT);
    LocalDate clocksBack = LocalDate.of(2026, 10, 24);
    return List.of(
        Days.day(KITCHEN, Wish.plums(105).with(1), Wish.tomatoes(135).with(1)),
        Days.day(KITCHEN, Wish.plums(14).by("02:00")),
        Days.day(KITCHEN, Wish.plums(14).from("09:00").by("09:30")),
        Days.day(KITCHEN, Wish.beans(1)),
        Days.day(Days.kitchen(2, Days.ZONE, UNKNOWN), Wish.beans(7)),
        Days.day(
            Days.kitchen(2, Days.ZONE, Days.canner("pot", Method.BOILING_WATER, "", "", 0)),
            Wish.plums(2)),
        Days.day(berlin, Wish.plums(21).on(clocksBack).from("22:30")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void everyNoticeOfRealDaysHasItsSentence(String language) {
    NoticeWords words = new NoticeWords(WordBundle.load(language));
    Set<Notice.Kind> seen = EnumSet.noneOf(Notice.Kind.class);
    for (DayPlan day : days()) {
      day.notices().forEach(n -> seen.add(n.kind()));
      for (String sentence : words.of(day)) {
        assertFalse(sentence.contains("{"), sentence);
        assertTrue(sentence.endsWith("."), sentence);
      }
    }
    assertTrue(
        seen.containsAll(
            EnumSet.of(
                Notice.Kind.USUAL_START,
                Notice.Kind.STARTS_DAY_BEFORE,
                Notice.Kind.OVER_MIDNIGHT,
                Notice.Kind.CLOCKS_CHANGE,
                Notice.Kind.LATE,
                Notice.Kind.LONG_DAY,
                Notice.Kind.POWER_ASSUMED,
                Notice.Kind.CANNER_UNCOUNTED,
                Notice.Kind.SMALL_PRESSURE_LOAD,
                Notice.Kind.WATER_UNMEASURED)),
        () -> "seen only " + seen);
  }

  /** Berlin, 25 October 2026: the clocks go from 03:00 back to 02:00. */
  @Test
  void theNightTheClocksGoBackIsTold() {
    List<String> told = new NoticeWords(WordBundle.load("en")).of(days().get(6));
    assertTrue(
        told.contains(
            "The clocks change during this time, from 3:00 AM to 2:00 AM: time a process by a"
                + " timer, not by the clock."),
        () -> String.join("\n", told));
    assertTrue(told.contains("The last jars come out after midnight, on October 25, 2026."));
  }

  /** NCHFP, Using Pressure Canners: four quart jars at least. */
  @Test
  void aPressureCannerThatNobodyMeasuredIsAskedAbout() {
    NoticeWords words = new NoticeWords(WordBundle.load("en"));
    String asked =
        "dial: use it only if 4 quart jars or more stand upright in it under the lid. A smaller"
            + " canner heats and cools too fast.";
    assertTrue(words.of(days().get(4)).contains(asked), () -> words.of(days().get(4)).toString());
    assertFalse(words.of(days().get(3)).contains(asked));
  }

  @Test
  void aBatchIsNamedWhereTheDayHasSeveral() {
    NoticeWords words = new NoticeWords(WordBundle.load("en"));
    DayPlan one = Days.day(KITCHEN, Wish.beans(1));
    DayPlan two = Days.day(KITCHEN, Wish.beans(1), Wish.plums(7));
    assertTrue(words.of(one).stream().anyMatch(s -> s.startsWith("A small pressure load")));
    assertTrue(words.of(two).stream().anyMatch(s -> s.startsWith("A: A small pressure load")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void everyDayCanBePrinted(String language) throws Exception {
    DaySheet sheet =
        new DaySheet(
            Product::name,
            UnaryOperator.identity(),
            BuyingTables.read(),
            new StepTexts(WordBundle.load(language), p -> Days.steps(p, language)));
    for (DayPlan day : days()) {
      ByteArrayOutputStream pdf = new ByteArrayOutputStream();
      new Printer(Optional.empty()).pdf(sheet.of(List.of(day), PaperSize.A4, day.date()), pdf);
      assertTrue(pdf.toString(ISO_8859_1).startsWith("%PDF-"));
    }
  }

  @Test
  void oneJarIsAJarAndNotJars() {
    NoticeWords words = new NoticeWords(WordBundle.load("en"));
    String one = String.join(" ", words.of(Days.day(KITCHEN, Wish.beans(1))));
    assertTrue(one.contains("A small pressure load: 1 jar of food, and "), one);
  }

  /** What holds for two batches is said once, for both. */
  @Test
  void whatIsTheSameForTwoBatchesIsSaidOnce() {
    NoticeWords words = new NoticeWords(WordBundle.load("en"));
    Canner unknown = Days.canner("pot", Method.BOILING_WATER, "33 cm", "30 cm", 0);
    DayPlan day = Days.day(Days.kitchen(4, Days.ZONE, unknown), Wish.plums(7), Wish.tomatoes(7));
    List<String> told =
        words.of(day).stream().filter(s -> s.contains("heating times are rough")).toList();
    assertEquals(1, told.size(), told.toString());
    assertTrue(told.get(0).startsWith("A, B: "), told.get(0));
  }
}
