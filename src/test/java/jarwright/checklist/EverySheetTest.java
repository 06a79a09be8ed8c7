package jarwright.checklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.PlannedBatch;
import jarwright.page.PaperSize;
import jarwright.page.Wording;
import jarwright.render.WordBundle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sheet for every product, method and pack, read back and measured; lengths in mm. */
class EverySheetTest {
  private static final double FILM = 8;
  private static final double HOLES = 20;

  /** A half of the thickest line that may stand on a margin. */
  private static final double HALF_A_LINE = 0.5;

  /** Every so many are printed and measured; the profile {@code sweep} takes all. */
  private static final int STEP = Integer.getInteger("sweep.sheets", 8);

  /** Type that is no smaller than any element may set it. */
  private static final double SMALLEST = 6;

  /** Lines of words on a side below which it looks like a mistake: common practice, no source. */
  private static final int FEWEST_LINES = 10;

  @ParameterizedTest
  @CsvSource({
    "en, 0, false", "en, 0, true", "en, 1, false", "en, 1, true",
    "es, 0, false", "es, 0, true", "es, 1, false", "es, 1, true"
  })
  void everySheetKeepsItsMarginsAndItsWordsApart(String language, int paper, boolean large) {
    PaperSize size = PaperSize.NAMED.get(paper);
    Wording words = WordBundle.load(language);
    List<PlannedBatch> all = List.copyOf(AllBatches.named().values());
    assertTrue(all.size() > 250, "products, methods and packs");
    List<PlannedBatch> measured = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (i % STEP == 0) {
        measured.add(all.get(i));
      }
    }
    byte[] pdf =
        Printed.pdf(
            size, large, measured.stream().map(b -> Printed.view(b, words)).toList(), words);
    String first = words.text("head.side") + " 1 " + words.text("head.of");
    List<String> texts = Printed.sides(pdf);
    assertEquals(measured.size(), texts.stream().filter(s -> s.contains(first)).count());
    List<Ink> sides = Ink.of(pdf);
    for (int i = 0; i < sides.size(); i++) {
      boolean front = i % 2 == 0;
      inside(sides.get(i), front ? HOLES : FILM, size.width() - (front ? FILM : HOLES), size);
      apart(sides.get(i));
      noRuleThroughWords(sides.get(i));
      filled(sides.get(i), texts.get(i));
    }
  }

  /** A line drawn across meets no character, as a headspace at true size could. */
  private static void noRuleThroughWords(Ink side) {
    for (Ink.Shape rule : side.shapes()) {
      if (rule.tall() > 0.01) {
        continue;
      }
      for (Ink.Glyph glyph : side.glyphs()) {
        boolean across = glyph.left() < rule.right() && glyph.right() > rule.left();
        boolean through = glyph.top() < rule.top() && glyph.base() > rule.top();
        assertTrue(
            glyph.text().isBlank() || !across || !through, () -> rule + " runs through " + glyph);
      }
    }
  }

  /** No side holds a few lost lines; the back of a sheet before the next one may be empty. */
  private static void filled(Ink side, String text) {
    Set<Long> lines = new TreeSet<>();
    side.glyphs().stream()
        .filter(g -> !g.text().isBlank())
        .forEach(g -> lines.add(Math.round(g.base())));
    assertTrue(lines.isEmpty() || lines.size() >= FEWEST_LINES, () -> "almost empty: " + text);
  }

  private static void inside(Ink side, double left, double right, PaperSize size) {
    for (Ink.Shape shape : side.shapes()) {
      assertTrue(
          shape.left() >= left - HALF_A_LINE
              && shape.right() <= right + HALF_A_LINE
              && shape.top() >= FILM - HALF_A_LINE
              && shape.bottom() <= size.height() - FILM + HALF_A_LINE,
          shape::toString);
    }
    for (Ink.Glyph glyph : side.glyphs()) {
      assertTrue(
          glyph.left() >= left
              && glyph.right() <= right + HALF_A_LINE
              && glyph.base() <= size.height() - FILM + HALF_A_LINE,
          glyph::toString);
      assertTrue(glyph.text().isBlank() || glyph.size() >= SMALLEST, glyph::toString);
    }
  }

  private static void apart(Ink side) {
    List<Ink.Glyph> glyphs =
        side.glyphs().stream()
            .filter(g -> !g.text().isBlank() && !g.text().equals("\u2044"))
            .sorted(Comparator.comparingDouble(Ink.Glyph::top))
            .toList();
    for (int i = 0; i < glyphs.size(); i++) {
      for (int j = i + 1; j < glyphs.size() && glyphs.get(j).top() < glyphs.get(i).base(); j++) {
        Ink.Glyph a = glyphs.get(i);
        Ink.Glyph b = glyphs.get(j);
        double across = Math.min(a.right(), b.right()) - Math.max(a.left(), b.left());
        double down = Math.min(a.base(), b.base()) - Math.max(a.top(), b.top());
        assertTrue(across < 0.4 || down < 0.4, () -> a + " lies upon " + b);
      }
    }
  }
}
