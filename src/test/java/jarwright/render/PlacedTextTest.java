package jarwright.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.page.DoesNotFit;
import jarwright.page.TemplateFault;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Words fitted into the boxes of a label. */
class PlacedTextTest {

  private static List<Glyphs.Run> runs(String text) {
    return Glyphs.of(
        Prints.body(
            "<drawing w=\"100\" h=\"60\" alt=\"x\" hyphenate=\"yes\">" + text + "</drawing>"));
  }

  private static String words(List<Glyphs.Run> runs) {
    StringBuilder words = new StringBuilder();
    runs.forEach(run -> words.append(run.text()));
    return words.toString().strip();
  }

  private static double size(List<Glyphs.Run> runs) {
    return runs.get(0).size();
  }

  @Test
  void shortWordsAreSetAtTheLargestSize() {
    assertEquals(
        20,
        size(runs("<text x=\"0\" y=\"0\" w=\"60\" h=\"20\" size=\"20\" min=\"8\">Plums</text>")),
        0.01);
  }

  @Test
  void longWordsAreSetSmallerUntilTheyFit() {
    var runs =
        runs(
            "<text x=\"0\" y=\"0\" w=\"40\" h=\"10\" size=\"20\" min=\"8\">Tomatoes, whole or"
                + " halved, in water</text>");
    assertEquals("Tomatoes, whole or halved, in water", words(runs));
    assertTrue(size(runs) < 14 && size(runs) >= 8, "size " + size(runs));
    for (Glyphs.Run run : runs) {
      assertTrue(run.right() - runs.get(0).left() <= Units.pt(40) + 3, "inside its box");
    }
  }

  @Test
  void theLeastImportantPartsAreDroppedFirstAndThoseOfZeroNever() {
    String parts = "<part>lot</part><part drop=\"1\">pack</part><part drop=\"2\">stall</part>";
    String text =
        "<text x=\"0\" y=\"0\" w=\"40\" h=\"%s\" size=\"10\" min=\"8\">" + parts + "</text>";
    assertEquals("lotpackstall", words(runs(text.replace("%s", "12"))));
    assertEquals("lotpack", words(runs(text.replace("%s", "8"))));
    assertEquals("lot", words(runs(text.replace("%s", "4"))));
    var e = assertThrows(DoesNotFit.class, () -> runs(text.replace("%s", "3")));
    assertEquals(
        "t.ftl:1: <text> \"lot\" does not fit: it needs 3.7 mm and has 3.0 mm", e.getMessage());
    assertEquals(3.67, e.needs(), 0.01);
    assertEquals(3, e.has(), 1e-9);
  }

  /** Lines once found are taken for the same words with other numbers. */
  @Test
  void digitsChangeNothingButThemselves() {
    String box =
        "<text x=\"0\" y=\"0\" w=\"24\" h=\"20\" size=\"20\" min=\"6\"><part>Lot of 48 jars, %s</part>"
            + "<part drop=\"1\" scale=\"0.6\">packed 2026-%s-24 and put away</part></text>";
    String first = box.replace("%s", "08");
    String second = box.replace("%s", "17");
    List<Glyphs.Run> both = runs(first + second);
    List<Glyphs.Run> alone = runs(second);
    assertEquals(alone, both.subList(both.size() - alone.size(), both.size()));
    assertEquals(words(runs(first)) + words(alone), words(both));
  }

  private static byte[] twoLabels(String first, String second) {
    return Prints.pdf(
        "<sheet><labels shape=\"rect\" columns=\"2\" rows=\"1\" w=\"50\" h=\"20\" left=\"10\""
            + " top=\"10\" pitch-x=\"60\" pitch-y=\"30\"><label>"
            + first
            + "</label><label>"
            + second
            + "</label></labels></sheet>");
  }

  @Test
  void aNamedTextIsShownAgainAtTheSamePlaceOfItsLabel() {
    String text =
        " x=\"5\" y=\"4\" w=\"30\" h=\"10\" size=\"14\" min=\"6\">Plums, in halves</text>";
    List<Glyphs.Run> again = Glyphs.of(twoLabels("<text name=\"a\"" + text, "<text name=\"a\"/>"));
    List<Glyphs.Run> twice = Glyphs.of(twoLabels("<text" + text, "<text" + text));
    assertEquals("Plums, in halvesPlums, in halves", words(again));
    assertEquals(twice.size(), again.size());
    for (int i = 0; i < twice.size(); i++) {
      assertEquals(twice.get(i).left(), again.get(i).left(), 0.02);
      assertEquals(twice.get(i).top(), again.get(i).top(), 0.02);
      assertEquals(twice.get(i).size(), again.get(i).size(), 0.01);
    }
  }

  @Test
  void aNamedTextIsRepeatedByItsNameAloneAndHasABox() {
    String first = "<text name=\"a\" x=\"5\" y=\"4\" w=\"30\" h=\"10\">Plums</text>";
    for (String second : List.of("<text name=\"a\" x=\"5\"/>", "<text name=\"a\">Pears</text>")) {
      var e = assertThrows(TemplateFault.class, () -> twoLabels(first, second));
      assertEquals(
          "t.ftl:1: a text named \"a\" stands before; this one must have its name alone, to repeat it",
          e.getMessage());
    }
    var e =
        assertThrows(
            TemplateFault.class,
            () -> twoLabels("<text name=\"a\" x=\"5\" y=\"4\">Plums</text>", ""));
    assertEquals("t.ftl:1: <text> with a name needs a box: w and h", e.getMessage());
  }

  @Test
  void aWordIsDividedOnlyIfThatSavesAFifthOfTheSize() {
    String text =
        "<text x=\"0\" y=\"0\" w=\"%s\" h=\"20\" size=\"14\" min=\"6\">Chrysanthemum</text>";
    assertEquals("Chrysanthemum", words(runs(text.replace("%s", "30"))));
    assertEquals("Chrysan-themum", words(runs(text.replace("%s", "17"))));
  }

  @Test
  void aWordThatIsNotToWrapIsRefusedRatherThanBroken() {
    var e =
        assertThrows(
            DoesNotFit.class,
            () ->
                runs(
                    "<text x=\"0\" y=\"0\" w=\"12\" h=\"20\" size=\"9\" wrap=\"no\">LOT"
                        + " 260824A-K/01</text>"));
    assertTrue(e.needs() > 20 && e.needs() < 30, "needs " + e.needs());
  }

  @Test
  void anAnchoredLineEndsBeginsOrCentresAtItsPoint() {
    String text = "<text x=\"50\" y=\"30\" size=\"12\" align=\"%s\">Plums</text>";
    double at = Units.pt(12 + 50);
    assertEquals(at, left(runs(text.replace("%s", "left"))), 0.6);
    assertEquals(at, right(runs(text.replace("%s", "right"))), 0.6);
    List<Glyphs.Run> centred = runs(text.replace("%s", "center"));
    assertEquals(at, (left(centred) + right(centred)) / 2, 0.6);
    assertEquals(Units.pt(12 + 30), centred.get(0).bottom(), 0.01);
  }

  private static double left(List<Glyphs.Run> runs) {
    return runs.stream().mapToDouble(Glyphs.Run::left).min().orElseThrow();
  }

  private static double right(List<Glyphs.Run> runs) {
    return runs.stream().mapToDouble(Glyphs.Run::right).max().orElseThrow();
  }

  @Test
  void turnedWordsStayInTheirBox() {
    for (String turn : List.of("90", "-90")) {
      var runs =
          runs(
              "<text x=\"10\" y=\"5\" w=\"8\" h=\"40\" size=\"12\" min=\"6\" turn=\""
                  + turn
                  + "\">turned by a quarter</text>");
      for (Glyphs.Run run : runs) {
        assertTrue(run.left() >= Units.pt(22) - 1 && run.right() <= Units.pt(30) + 1, "across");
        assertTrue(run.top() >= Units.pt(17) - 1 && run.bottom() <= Units.pt(57) + 1, "along");
      }
    }
  }
}
