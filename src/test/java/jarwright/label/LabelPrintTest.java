package jarwright.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.page.LabelShape;
import jarwright.page.LabelStock;
import jarwright.page.Wording;
import jarwright.render.Glyphs;
import jarwright.render.Rectangles;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every product's name on every stock, read back from the PDF by another library. */
class LabelPrintTest {
  private static final double MM = 72 / 25.4;
  private static final double SAFE = 2;
  private static final double QUIET = 4 * 0.42;
  private static final double HAIR = 0.06;

  static Stream<String> everyStock() {
    return LabelSamples.stocks().stream().map(LabelStock::id);
  }

  /** One printed label: what stands on it, in mm from its own upper left corner. */
  private record Face(String where, JarLabel label, List<Glyphs.Run> glyphs, Rectangles.Box code) {
    /** The words in drawing order, without the spaces. */
    String words() {
      StringBuilder words = new StringBuilder();
      glyphs.forEach(g -> words.append(g.text().strip()));
      return words.toString();
    }
  }

  @ParameterizedTest
  @MethodSource("everyStock")
  void everyEnglishNameFits(String id) {
    List<Face> faces =
        check(LabelSamples.stock(id), labels("products.csv", false), LabelSamples.ENGLISH);
    faces.forEach(LabelPrintTest::theDateThatDecidesIsTheLarger);
  }

  /** Larger or bold: the eye finds the day to use it by before the day it was packed. */
  private static void theDateThatDecidesIsTheLarger(Face face) {
    double useBy = width(face, face.label().useBy().toString());
    double packed = width(face, face.label().packed().orElseThrow().toString());
    assertTrue(useBy > packed * 1.02, () -> face.where() + ": " + useBy + " and " + packed);
  }

  /** How wide those characters stand, in mm; 0 if they are left out. */
  private static double width(Face face, String words) {
    int at = face.words().indexOf(words);
    return at < 0
        ? 0
        : face.glyphs().get(at + words.length() - 1).right() - face.glyphs().get(at).left();
  }

  /** Every fourth jar is one for the refrigerator. */
  @ParameterizedTest
  @MethodSource("everyStock")
  void everySpanishNameFits(String id) {
    check(LabelSamples.stock(id), labels("products_es.csv", true), LabelSamples.spanishNames());
  }

  private static List<JarLabel> labels(String names, boolean cold) {
    List<JarLabel> labels = new ArrayList<>();
    for (String name : LabelSamples.names(names)) {
      int number = labels.size() + 1;
      JarLabel label = LabelSamples.lean(name, number);
      labels.add(cold && number % 4 == 0 ? label.cold(3, LabelSamples.DAY.plusDays(3)) : label);
    }
    assertEquals(161, labels.size());
    return labels;
  }

  private static List<Face> check(LabelStock stock, List<JarLabel> labels, Wording words) {
    List<Face> faces = faces(stock, labels, words);
    assertEquals(labels.size(), faces.size());
    for (Face face : faces) {
      saysLotAndUseBy(face);
      keepsClearOfTheEdge(stock, face);
      nothingOverlaps(face);
    }
    return faces;
  }

  private static List<Face> faces(LabelStock stock, List<JarLabel> labels, Wording words) {
    List<Face> faces = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(LabelSamples.print(labels, stock, words))) {
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        List<Glyphs.Run> glyphs = Glyphs.of(document, page);
        List<Rectangles.Box> codes = Rectangles.of(document, page).pictures();
        for (int place = 0; place < stock.labelsPerSheet() && faces.size() < labels.size(); ) {
          JarLabel label = labels.get(faces.size());
          String where = stock.id() + ": " + label.product();
          LabelStock.Position at = stock.position(place);
          place++;
          List<Rectangles.Box> own =
              codes.stream()
                  .map(b -> new Rectangles.Box(b.x() - at.x(), b.y() - at.y(), b.w(), b.h()))
                  .filter(b -> on(stock, b.x() + b.w() / 2, b.y() + b.h() / 2))
                  .toList();
          assertEquals(1, own.size(), where);
          List<Glyphs.Run> there =
              glyphs.stream()
                  .map(g -> moved(g, at))
                  .filter(g -> on(stock, (g.left() + g.right()) / 2, (g.top() + g.bottom()) / 2))
                  .filter(g -> !g.text().isBlank())
                  .toList();
          faces.add(new Face(where, label, there, own.get(0)));
        }
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return faces;
  }

  private static Glyphs.Run moved(Glyphs.Run g, LabelStock.Position at) {
    return new Glyphs.Run(
        g.text(),
        g.left() / MM - at.x(),
        g.right() / MM - at.x(),
        g.top() / MM - at.y(),
        g.bottom() / MM - at.y(),
        g.size());
  }

  private static boolean on(LabelStock stock, double x, double y) {
    return x >= 0 && y >= 0 && x < stock.labelWidth() && y < stock.labelHeight();
  }

  private static void saysLotAndUseBy(Face face) {
    String words = face.words();
    assertTrue(words.contains(face.label().jar().toString()), face.where() + " says " + words);
    assertTrue(words.contains("by" + face.label().useBy()), face.where() + " says " + words);
    String title = ProductTitle.of(face.label().product()).title().replaceAll("\\s", "");
    assertTrue(
        words.replace("-", "").contains(title.replace("-", "")), face.where() + " says " + words);
    for (Glyphs.Run glyph : face.glyphs()) {
      assertTrue(glyph.size() >= 6 - 1e-3, () -> face.where() + ": " + glyph);
    }
  }

  private static void keepsClearOfTheEdge(LabelStock stock, Face face) {
    for (Glyphs.Run g : face.glyphs()) {
      Supplier<String> what = () -> face.where() + ": " + g;
      if (stock.shape() == LabelShape.CIRCLE) {
        double middle = stock.labelWidth() / 2;
        double x = Math.max(Math.abs(g.left() - middle), Math.abs(g.right() - middle));
        double y = Math.max(Math.abs(g.top() - middle), Math.abs(g.bottom() - middle));
        assertTrue(Math.hypot(x, y) <= middle - SAFE + 0.5, what);
      } else {
        assertTrue(g.left() >= SAFE - HAIR && g.top() >= SAFE - HAIR, what);
        assertTrue(g.right() <= stock.labelWidth() - SAFE + HAIR, what);
        assertTrue(g.bottom() <= stock.labelHeight() - SAFE + HAIR, what);
      }
    }
    Rectangles.Box code = face.code();
    assertTrue(code.x() >= SAFE && code.y() >= SAFE, face.where() + ": " + code);
    assertTrue(code.x() + code.w() <= stock.labelWidth() - SAFE, face.where() + ": " + code);
    assertTrue(code.y() + code.h() <= stock.labelHeight() - SAFE, face.where() + ": " + code);
  }

  /** Neither words over words nor words in the quiet zone of the code. */
  private static void nothingOverlaps(Face face) {
    Rectangles.Box code = face.code();
    List<Glyphs.Run> glyphs = face.glyphs();
    for (int i = 0; i < glyphs.size(); i++) {
      Glyphs.Run g = glyphs.get(i);
      boolean beside =
          g.right() <= code.x() - QUIET + HAIR
              || g.left() >= code.x() + code.w() + QUIET - HAIR
              || g.bottom() <= code.y() - QUIET + HAIR
              || g.top() >= code.y() + code.h() + QUIET - HAIR;
      assertTrue(beside, () -> face.where() + ": " + g + " in the code " + code);
      for (int k = i + 1; k < glyphs.size(); k++) {
        Glyphs.Run other = glyphs.get(k);
        boolean apart =
            g.right() <= other.left() + 0.1
                || other.right() <= g.left() + 0.1
                || g.bottom() <= other.top() + 0.1
                || other.bottom() <= g.top() + 0.1;
        assertTrue(apart, () -> face.where() + ": " + g + " over " + other);
      }
    }
  }
}
