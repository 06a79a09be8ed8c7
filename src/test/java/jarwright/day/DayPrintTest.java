package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.Days.Wish;
import jarwright.files.BuyingTables;
import jarwright.page.PaperSize;
import jarwright.page.Wording;
import jarwright.plan.ClockHours;
import jarwright.plan.Kitchen;
import jarwright.problem.Refused;
import jarwright.process.Buying;
import jarwright.process.JarSize;
import jarwright.process.Pack;
import jarwright.process.Product;
import jarwright.render.Printer;
import jarwright.render.WordBundle;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The day on paper, read back. */
class DayPrintTest {
  private static final Kitchen KITCHEN =
      Days.kitchen(4, Days.ZONE, Days.POT, Days.SECOND_POT, Days.DIAL);

  /** Lines under which a side would be nearly empty. */
  private static final int FEWEST_LINES = 12;

  private static final Buying BUYING = buying();

  private static Buying buying() {
    try {
      return BuyingTables.read();
    } catch (IOException | Refused e) {
      throw new AssertionError(e);
    }
  }

  private static List<String> sides(DayPlan day, PaperSize paper, String language)
      throws IOException {
    Wording words = WordBundle.load(language);
    StepTexts steps = new StepTexts(words, p -> Days.steps(p, language));
    DaySheet sheet = new DaySheet(Product::name, UnaryOperator.identity(), BUYING, steps);
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    new Printer(Optional.empty()).pdf(sheet.of(List.of(day), paper, day.date()), pdf);
    List<String> sides = new ArrayList<>();
    try (PDDocument read = Loader.loadPDF(pdf.toByteArray())) {
      PDFTextStripper stripper = new PDFTextStripper();
      for (int side = 1; side <= read.getNumberOfPages(); side++) {
        stripper.setStartPage(side);
        stripper.setEndPage(side);
        sides.add(stripper.getText(read));
      }
    }
    return sides;
  }

  private static String words(String side) {
    return side.replaceAll("\\s+", " ");
  }

  private static Kitchen clock(ClockHours hours) {
    Kitchen k = KITCHEN;
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
        hours,
        k.pots(),
        k.times());
  }

  private static Wish[] ordinary() {
    return new Wish[] {Wish.plums(14).from("08:30"), Wish.tomatoes(9)};
  }

  @Test
  void theFirstSideSaysWhenToBeginWhenItIsDoneWhatToBuyAndWhichFoodIsWhich() throws Exception {
    DayPlan day = Days.day(KITCHEN, ordinary());
    String first = words(sides(day, PaperSize.LETTER, "en").get(0));
    ClockTime clock = new ClockTime(ClockHours.TWELVE, WordBundle.load("en"));
    String done = clock.of(day.at(day.finish()));
    assertTrue(first.contains("Monday, August 24, 2026"), first);
    assertTrue(first.contains("8:30 AM"), first);
    assertTrue(first.contains(done), first);
    assertTrue(first.contains("Hands begin") && first.contains("Done about"), first);
    assertTrue(first.contains("A1 Plums, halved or whole"), first);
    assertTrue(first.contains("B Tomatoes"), first);
    int gather = first.indexOf("Buy and lay out");
    assertTrue(gather > 0 && first.indexOf("New lids") > gather, first);
    assertTrue(first.contains("Hour by hour"), "an ordinary day has its hours on the same side");
  }

  @ParameterizedTest
  @CsvSource({"LETTER, en", "LETTER, es", "A4, en", "A4, es"})
  void anOrdinaryDayIsOneSheetAndItsPictureTheBack(String paper, String language) throws Exception {
    PaperSize size = paper.equals("A4") ? PaperSize.A4 : PaperSize.LETTER;
    assertEquals(2, sides(Days.day(KITCHEN, ordinary()), size, language).size());
  }

  @ParameterizedTest
  @CsvSource({"LETTER, en", "LETTER, es", "A4, en", "A4, es"})
  void noSideIsNearlyEmpty(String paper, String language) throws Exception {
    PaperSize size = paper.equals("A4") ? PaperSize.A4 : PaperSize.LETTER;
    List<DayPlan> days =
        List.of(
            Days.day(KITCHEN, Wish.plums(1)),
            Days.day(KITCHEN, ordinary()),
            Days.day(KITCHEN, Wish.plums(28), Wish.tomatoes(18)),
            Days.day(KITCHEN, Wish.plums(35), Wish.tomatoes(27), Wish.beans(14)),
            Days.day(KITCHEN, Wish.plums(105).with(1), Wish.tomatoes(135).with(1)),
            Days.day(KITCHEN, Wish.of("sauerkraut", Pack.HOT, JarSize.QUART, 9)),
            Days.day(KITCHEN, Wish.of("14-day-sweet-pickles", Pack.RAW, JarSize.PINT, 9)),
            Days.day(
                KITCHEN,
                Wish.of("bread-and-butter-pickles", Pack.HOT, JarSize.PINT, 16),
                Wish.of("berry-jam-no-added-pectin", Pack.HOT, JarSize.HALF_PINT, 9),
                Wish.of("tomato-salsa-paste-tomatoes", Pack.HOT, JarSize.PINT, 9)));
    for (DayPlan day : days) {
      List<String> sides = sides(day, size, language);
      for (String side : sides) {
        int lines = side.strip().split("\\R").length;
        assertTrue(lines >= FEWEST_LINES, sides.size() + " sides, one with " + side);
      }
    }
  }

  @Test
  void clocksOfTwelveAndOfTwentyFourHoursAreNeverMixed() throws Exception {
    for (ClockHours hours : ClockHours.values()) {
      DayPlan day = Days.day(clock(hours), ordinary());
      String all = words(String.join(" ", sides(day, PaperSize.LETTER, "en")));
      boolean twelve = hours == ClockHours.TWELVE;
      assertEquals(twelve, all.contains("8:30 AM"), all);
      assertEquals(twelve, all.matches(".*\\d:\\d\\d PM.*"), all);
      assertEquals(!twelve, all.contains("08:30"), all);
      assertFalse(twelve && all.matches(".*\\b1[3-9]:\\d\\d.*"), all);
    }
  }

  /** AIB 539 (2015) Guide 1: 12 to 24 hours, so the morning will do where 12 end at night. */
  @Test
  void sealsAreTestedInTheMorningAndNotAtNight() throws Exception {
    DayPlan day = Days.day(KITCHEN, ordinary());
    assertTrue(day.loads().stream().allMatch(PlannedLoad::isTestedInTheMorning));
    String first = words(sides(day, PaperSize.LETTER, "en").get(0));
    assertTrue(first.contains("next morning"), first);
    DayPlan early = Days.day(KITCHEN, Wish.plums(7).from("05:00"));
    assertFalse(early.loads().get(0).isTestedInTheMorning());
  }

  @Test
  void whatComesBeforeTheDayStandsOnItsFirstSide() throws Exception {
    DayPlan day =
        Days.day(
            KITCHEN,
            Wish.of("quick-fresh-pack-dill-pickles", Pack.RAW, JarSize.QUART, 7).from("08:30"));
    String first = words(sides(day, PaperSize.LETTER, "en").get(0));
    assertTrue(first.contains("Before this day"), first);
    assertTrue(first.contains("Sunday, Aug 23, "), first);
    assertTrue(first.contains("Let them stand 12 h. Ready "), first);
  }

  @Test
  void noonAndMidnightHaveTheirNames() {
    ClockTime clock = new ClockTime(ClockHours.TWELVE, WordBundle.load("en"));
    assertEquals("12:00 noon", clock.of(java.time.LocalTime.NOON));
    assertEquals("12:00 midnight", clock.of(java.time.LocalTime.MIDNIGHT));
    assertEquals("12:05 AM", clock.of(java.time.LocalTime.of(0, 5)));
    assertEquals("12:59 PM", clock.of(java.time.LocalTime.of(12, 59)));
    assertEquals("1:00 PM", clock.of(java.time.LocalTime.of(13, 0)));
  }

  /** More to buy, more work ahead and more hours than one side holds. */
  @Test
  void aDayOfManyBatchesGoesOnOverItsSides() throws Exception {
    List<Wish> wishes = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      wishes.add(Wish.of("sweet-gherkin-pickles", Pack.RAW, JarSize.PINT, 7));
      wishes.add(Wish.of("pickle-relish", Pack.HOT, JarSize.PINT, 9));
      wishes.add(Wish.of("14-day-sweet-pickles", Pack.RAW, JarSize.PINT, 9));
    }
    DayPlan day = Days.day(KITCHEN, wishes.toArray(new Wish[0]));
    for (String language : List.of("en", "es")) {
      List<String> sides = sides(day, PaperSize.LETTER, language);
      assertTrue(sides.size() > 4, "" + sides.size());
      sides.forEach(s -> assertTrue(s.strip().split("\\R").length >= FEWEST_LINES, s));
    }
  }
}
