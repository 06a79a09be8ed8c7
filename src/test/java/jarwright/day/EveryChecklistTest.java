package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.process.Answer;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.Setting;
import jarwright.process.TableRow;
import jarwright.process.TestedProcess;
import jarwright.quantity.Altitude;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What holds for the checklist of every product, method, pack and jar that has a process. */
class EveryChecklistTest {
  private static final List<String> ALTITUDES = List.of("0 ft", "3500 ft", "7500 ft");

  /** Filling is one round for each jar and is never cut. */
  private static final int MOST_FILL_STEPS = 12;

  private static final Set<String> ALWAYS =
      Set.of("before", "jars", "produce", "fill", "canner", "clock", "out", "next-day");

  private static final List<Case> CASES = cases();

  private record Case(Setting setting, TestedProcess process, List<Section> sections) {
    static Case of(Setting setting, TestedProcess process) {
      List<Section> sections =
          PlannedBatch.of(setting.product().id(), setting.method(), setting.pack(), setting.jar())
              .at(setting.altitude().toString())
              .pressure(process.pressure())
              .sections();
      return new Case(setting, process, sections);
    }

    @Override
    public String toString() {
      return setting.product().id()
          + " "
          + setting.method()
          + " "
          + setting.pack()
          + " "
          + setting.jar()
          + " at "
          + setting.altitude();
    }
  }

  @Test
  void sectionsAreShortAndInWorkingOrder() {
    for (Case one : CASES) {
      List<Section> sections = one.sections();
      for (Section section : sections) {
        int most = section.id().equals("fill") ? MOST_FILL_STEPS : Pauses.MOST_STEPS;
        int steps = section.steps().size();
        assertTrue(steps >= 1 && steps <= most, () -> one + ": " + section.title() + " " + steps);
      }
      List<String> ids = sections.stream().map(Section::id).distinct().toList();
      List<String> order =
          Stream.of(
                  "ahead",
                  "before",
                  "jars",
                  "produce",
                  "fill",
                  "canner",
                  "clock",
                  "out",
                  "next-day",
                  "optional")
              .filter(ids::contains)
              .toList();
      assertEquals(order, ids, one::toString);
      assertTrue(ids.containsAll(ALWAYS), one::toString);
    }
  }

  /** AIB 539 (2015) Guide 6 has lime as a variation of these two recipes. */
  @ParameterizedTest
  @CsvSource({"bread-and-butter-pickles", "quick-sweet-pickles"})
  void whatMostLeaveOutStandsLast(String product) {
    List<Section> sections =
        PlannedBatch.of(product, Method.BOILING_WATER, Pack.HOT, JarSize.PINT).sections();
    assertEquals("before", sections.get(0).id());
    assertEquals("optional", sections.get(sections.size() - 1).id());
    for (Section section : sections) {
      boolean lime = section.steps().stream().anyMatch(s -> s.text().contains("lime"));
      assertEquals(section.id().equals("optional"), lime, section.title());
    }
  }

  /** AIB 539 (2015) Guide 6: two to three times each week, where jars are the weight. */
  @Test
  void fermentingKrautIsLookedAtWeekByWeek() {
    List<Section> kraut =
        PlannedBatch.of("sauerkraut", Method.BOILING_WATER, Pack.RAW, JarSize.QUART).sections();
    List<String> ahead = Outline.section("ahead", kraut);
    assertEquals(
        "- Look two or three times a week and skim off any scum"
            + " !A brine-filled bag as the weight: leave it shut until the bubbling stops",
        ahead.get(ahead.size() - 1));
  }

  @Test
  void theClockShowsTheTablesMinutesAndPressureAndNothingElseDoes() {
    for (Case one : CASES) {
      List<Step.Clock> clocks =
          steps(one).filter(Step.Clock.class::isInstance).map(Step.Clock.class::cast).toList();
      assertEquals(1, clocks.size(), one::toString);
      assertEquals(one.process().minutes(), clocks.get(0).minutes(), one::toString);
      assertEquals(
          one.process().pressure().map(p -> p.inPsi() + " psi").orElse("none"),
          clocks.get(0).pressure().map(Figure::main).orElse("none"),
          one::toString);
    }
  }

  @Test
  void acidIsTickedJarByJarExactlyWhereTheTablesDoseItByTheJar() {
    for (Case one : CASES) {
      List<Step.PerJar> tallies =
          steps(one).filter(Step.PerJar.class::isInstance).map(Step.PerJar.class::cast).toList();
      boolean dosed = one.setting().product().acid().needsChoice();
      assertEquals(dosed ? 1 : 0, tallies.size(), one::toString);
      for (Step.PerJar tally : tallies) {
        int jars = one.setting().jar().compareTo(JarSize.PINT) > 0 ? 7 : 9;
        assertEquals(jars, tally.jars(), one::toString);
      }
    }
  }

  @Test
  void everyLineIsWordedAndEveryHeadspaceIsDrawn() {
    for (Case one : CASES) {
      assertTrue(steps(one).noneMatch(s -> s.text().isBlank()), one::toString);
      assertEquals(1, steps(one).filter(Step.Gauge.class::isInstance).count(), one::toString);
      assertEquals(
          one.setting().product().headspace().of(one.setting().pack(), one.setting().jar()).stream()
              .map(h -> h.depth().inInches())
              .toList(),
          steps(one)
              .filter(Step.Gauge.class::isInstance)
              .flatMap(s -> ((Step.Gauge) s).depths().stream())
              .map(d -> d.depth().inInches())
              .toList(),
          one::toString);
    }
  }

  private static Stream<Step> steps(Case one) {
    return one.sections().stream().flatMap(s -> s.steps().stream());
  }

  private static List<Case> cases() {
    ProcessBook book = PlannedBatch.book();
    List<Case> cases = new ArrayList<>();
    for (Product product : book.products()) {
      Set<JarSize> jars =
          book.rows(product.id()).stream().map(TableRow::jar).collect(Collectors.toSet());
      for (Method method : Method.values()) {
        for (Pack pack : List.of(Pack.RAW, Pack.HOT)) {
          for (JarSize jar : jars) {
            for (String altitude : ALTITUDES) {
              Setting asked = new Setting(product, method, pack, jar, Altitude.parse(altitude));
              book.lookUp(asked)
                  .fold(found -> cases.addAll(all(asked, found)), no -> false, gap -> false);
            }
          }
        }
      }
    }
    assertTrue(cases.size() > 1_000, () -> "only " + cases.size() + " cases");
    return cases;
  }

  private static List<Case> all(Setting asked, Answer.Found found) {
    return found.rows().stream().map(r -> Case.of(asked, r.process().orElseThrow())).toList();
  }
}
