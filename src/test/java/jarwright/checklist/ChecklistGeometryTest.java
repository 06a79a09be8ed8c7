package jarwright.checklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.PlannedBatch;
import jarwright.page.PaperSize;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sheet as a thing: what is where, how large, how far from the edge; lengths in mm. */
class ChecklistGeometryTest {
  /** Free of print for the film of a laminated sheet: common practice, no source. */
  private static final double FILM = 8;

  /** Free on the bound side, for holes (ISO 838: 12 mm from the edge, 6 mm wide). */
  private static final double HOLES = 20;

  private static final double TICK = 7;
  private static final double LARGE_TICK = 9;

  private static List<byte[]> samples() {
    PlannedBatch[] all = {
      Samples.plums(), Samples.tomatoes(), Samples.beans(), Samples.pickles(), Samples.meatSauce()
    };
    List<byte[]> pdfs = new ArrayList<>();
    for (PaperSize paper : PaperSize.NAMED) {
      for (PlannedBatch one : all) {
        pdfs.add(Printed.pdf(paper, false, one));
      }
      pdfs.add(Printed.pdf(paper, true, Samples.tomatoes()));
    }
    return pdfs;
  }

  @Test
  void theMarginsAreFreeForFilmAndHoles() {
    for (PaperSize paper : PaperSize.NAMED) {
      List<Ink> sides = Ink.of(Printed.pdf(paper, false, Samples.pickles()));
      for (int i = 0; i < sides.size(); i++) {
        boolean front = i % 2 == 0;
        assertInside(sides.get(i), front ? HOLES : FILM, paper.width() - (front ? FILM : HOLES));
        assertTrue(top(sides.get(i)) >= FILM - 0.5, "top of side " + (i + 1));
        assertTrue(bottom(sides.get(i)) <= paper.height() - FILM + 0.5, "foot of side " + (i + 1));
      }
    }
  }

  private static void assertInside(Ink side, double left, double right) {
    double half = 0.5;
    side.shapes()
        .forEach(
            s ->
                assertTrue(
                    s.left() >= left - half && s.right() <= right + half, () -> s.toString()));
    side.glyphs()
        .forEach(
            g -> assertTrue(g.left() >= left && g.right() <= right + half, () -> g.toString()));
  }

  private static double top(Ink side) {
    return Stream.concat(
            side.shapes().stream().map(Ink.Shape::top), side.glyphs().stream().map(Ink.Glyph::top))
        .min(Double::compare)
        .orElseThrow();
  }

  private static double bottom(Ink side) {
    return Stream.concat(
            side.shapes().stream().map(Ink.Shape::bottom),
            side.glyphs().stream().map(Ink.Glyph::base))
        .max(Double::compare)
        .orElseThrow();
  }

  @Test
  void everyStepHasABoxAndEveryJarOne() {
    PlannedBatch batch = Samples.tomatoes();
    long steps =
        batch.sections().stream()
            .flatMap(s -> s.steps().stream())
            .filter(s -> !List.of("TALLY", "RECORD").contains(s.kind().name()))
            .count();
    List<Ink> sides = Ink.of(Printed.pdf(batch));
    long boxes = sides.stream().mapToLong(s -> s.boxes(TICK).size()).sum();
    assertEquals(steps + 9, boxes);
  }

  /** Eyes and hands that need larger words need larger boxes. */
  @Test
  void aLargeSheetHasLargeBoxes() {
    List<Ink> sides = Ink.of(Printed.pdf(PaperSize.LETTER, true, Samples.tomatoes()));
    assertEquals(0, sides.stream().mapToLong(s -> s.boxes(TICK).size()).sum());
    assertTrue(sides.stream().mapToLong(s -> s.boxes(LARGE_TICK).size()).sum() > 30);
  }

  /** What is done while the clock runs and after it stands with it: nobody turns the sheet then. */
  @Test
  void theClockHasNoSideForItselfAlone() {
    for (PlannedBatch batch : List.of(Samples.plums(), Samples.beans(), Samples.tomatoes())) {
      List<String> sides = Printed.sides(Printed.pdf(PaperSize.LETTER, true, batch));
      String clock =
          sides.stream().filter(s -> s.contains("Start the timer")).findFirst().orElseThrow();
      assertTrue(
          clock.contains("Put the canner lid on") || clock.contains("Take out and cool"), clock);
    }
  }

  @Test
  void theScaleAtTheEdgeSaysWhatItIs() {
    for (Ink side : Ink.of(Printed.pdf(Samples.plums()))) {
      StringBuilder words = new StringBuilder();
      side.glyphs().forEach(g -> words.append(g.text()));
      assertTrue(words.toString().contains("Altitude: 1,001 to 3,000 ft"), words::toString);
    }
  }

  @Test
  void wordsAreFourteenPointAndLargeOnesEighteen() {
    byte[] usual = Printed.pdf(Samples.plums());
    byte[] large = Printed.pdf(PaperSize.LETTER, true, Samples.plums());
    assertEquals(14, Ink.of(usual).get(0).sizeOf("Wipe the rim"), 0.01);
    assertEquals(18, size(Ink.of(large), "Wipe the rim"), 0.01);
    assertTrue(Ink.of(usual).get(0).sizeOf("140 °F") > 18, "figures are bigger");
  }

  private static double size(List<Ink> sides, String words) {
    AssertionError missed = new AssertionError(words);
    for (Ink side : sides) {
      try {
        return side.sizeOf(words);
      } catch (AssertionError elsewhere) {
        missed = elsewhere;
      }
    }
    throw missed;
  }

  @Test
  void wordsNeverLieUponWords() {
    for (byte[] pdf : samples()) {
      for (Ink side : Ink.of(pdf)) {
        List<Ink.Glyph> upright =
            side.glyphs().stream()
                .filter(g -> !g.text().isBlank() && !g.text().equals("\u2044"))
                .toList();
        for (int i = 0; i < upright.size(); i++) {
          for (int j = i + 1; j < upright.size(); j++) {
            assertApart(upright.get(i), upright.get(j));
          }
        }
      }
    }
  }

  private static void assertApart(Ink.Glyph a, Ink.Glyph b) {
    double across = Math.min(a.right(), b.right()) - Math.max(a.left(), b.left());
    double down = Math.min(a.base(), b.base()) - Math.max(a.top(), b.top());
    assertTrue(across < 0.4 || down < 0.4, () -> a + " lies upon " + b);
  }

  @Test
  void linesAreNoHairlinesAndAllInkIsBlackOrGrey() {
    for (byte[] pdf : samples()) {
      for (Ink side : Ink.of(pdf)) {
        for (Ink.Shape shape : side.shapes()) {
          assertTrue(shape.weight() == 0 || shape.weight() >= 0.5, shape::toString);
          float[] tone = shape.tone().getComponents();
          for (float part : tone) {
            assertEquals(tone[0], part, 0.001, () -> Arrays.toString(tone));
          }
        }
      }
    }
  }

  /** Headspaces as AIB 539 (2015) prints them, each in a product that has it; inches of 25.4 mm. */
  @ParameterizedTest
  @CsvSource({
    "tomato-ketchup,            boiling-water, hot, pint, 3.175",
    "apple-jelly-no-added-pectin, boiling-water, hot, half-pint, 6.35",
    "plums-halved-or-whole,     boiling-water, raw, quart, 12.7",
    "beans-snap-italian,        dial-gauge,    raw, quart, 25.4",
    "chicken-or-rabbit-bone-in, dial-gauge,    raw, quart, 31.75"
  })
  void headspaceIsDrawnAsDeepAsItIs(
      String product, String method, String pack, String jar, double depth) {
    byte[] pdf =
        Printed.pdf(
            PlannedBatch.of(
                product,
                Method.named(method).orElseThrow(),
                Pack.named(pack).orElseThrow(),
                JarSize.named(jar).orElseThrow()));
    assertEquals(List.of(depth), depths(pdf), product);
  }

  /** A quarter of an inch is less than a line of the larger type. */
  @Test
  void aShallowHeadspaceIsAsDeepOnALargeSheet() {
    PlannedBatch jelly =
        PlannedBatch.of(
            "apple-jelly-no-added-pectin", Method.BOILING_WATER, Pack.HOT, JarSize.HALF_PINT);
    assertEquals(List.of(6.35), depths(Printed.pdf(PaperSize.LETTER, true, jelly)));
  }

  @Test
  void twoHeadspacesAreDrawnSideBySide() {
    PlannedBatch beans =
        PlannedBatch.of("beans-lima-fresh", Method.DIAL_GAUGE, Pack.RAW, JarSize.QUART);
    assertEquals(List.of(38.1, 31.75), depths(Printed.pdf(beans)));
  }

  /** Distances between a gauge's upper line and the line below it, rounded to 0.05 mm. */
  private static List<Double> depths(byte[] pdf) {
    List<Double> depths = new ArrayList<>();
    for (Ink side : Ink.of(pdf)) {
      List<Ink.Shape> rules = side.rules(2, 60);
      for (int i = 0; i < rules.size(); i++) {
        for (int j = i + 1; j < rules.size(); j++) {
          boolean pair = Math.abs(rules.get(i).left() - rules.get(j).left()) < 0.01;
          if (pair) {
            double depth = rules.get(j).top() - rules.get(i).top();
            depths.add(Math.round(depth * 20) / 20.0 + 0.0);
          }
        }
      }
    }
    return depths.stream().map(ChecklistGeometryTest::eighths).toList();
  }

  /** A depth within a tenth of a millimetre of eighths of an inch is that. */
  private static double eighths(double mm) {
    double exact = Math.round(mm / 3.175) * 3.175;
    return Math.abs(mm - exact) < 0.1 ? Math.round(exact * 1000) / 1000.0 : mm;
  }
}
