package jarwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SheetTest {
  private static final Wording NO_WORDS = Wording.of(Locale.ENGLISH, Map.of());

  private static Sheet sheet(String template, Map<String, Object> view) {
    Sheet.About about = new Sheet.About("Title", "", List.of(), LocalDate.of(2026, 8, 24));
    return new Sheet(template, view, PaperSize.A4, NO_WORDS, about);
  }

  @Test
  void aValueThatNoTemplateCanShowIsToldWithItsPath() {
    Map<String, Object> view = Map.of("jars", List.of(Map.of("day", LocalDate.of(2026, 8, 24))));
    var e = assertThrows(IllegalArgumentException.class, () -> sheet("a.ftl", view));
    assertEquals(
        "view.jars[0].day: a template shows text, numbers, yes/no, lists and maps, not"
            + " java.time.LocalDate",
        e.getMessage());
  }

  @Test
  void nothingIsNoValue() {
    Map<String, Object> view = new HashMap<>();
    view.put("from", null);
    var e = assertThrows(IllegalArgumentException.class, () -> sheet("a.ftl", view));
    assertEquals(
        "view.from: a template shows text, numbers, yes/no, lists and maps, not nothing",
        e.getMessage());
  }

  @Test
  void theViewIsCopiedAllTheWayDown() {
    List<Object> jars = new ArrayList<>(List.of("01"));
    Sheet sheet = sheet("a.ftl", Map.of("jars", jars));
    jars.add("02");
    assertEquals(List.of("01"), sheet.view().get("jars"));
  }

  @Test
  void aWebPageIsKnownByItsTemplatesName() {
    assertTrue(sheet("record.html.ftl", Map.of()).isHtml());
    assertFalse(sheet("labels.ftl", Map.of()).isHtml());
  }

  @Test
  void aTitleIsNeeded() {
    var e =
        assertThrows(
            IllegalArgumentException.class,
            () -> new Sheet.About(" ", "", List.of(), LocalDate.of(2026, 8, 24)));
    assertEquals("a sheet needs a title", e.getMessage());
  }

  @Test
  void paperIsFoundByNameAndCanBeTurned() {
    assertEquals(PaperSize.LETTER, PaperSize.parse("Letter"));
    assertEquals(297, PaperSize.parse("a4").turned().width());
    var e = assertThrows(IllegalArgumentException.class, () -> PaperSize.parse("a5"));
    assertEquals("paper \"a5\"; there are letter, a4", e.getMessage());
  }

  @Test
  void aCorrectionNoAlignmentPageWouldGiveIsRefused() {
    var far = assertThrows(IllegalArgumentException.class, () -> new Registration(11, 0, 1));
    assertEquals("sheet offset 11.0, 0.0 mm; from -10 to 10 mm can be", far.getMessage());
    var large = assertThrows(IllegalArgumentException.class, () -> new Registration(0, 0, 1.03));
    assertEquals("sheet scale 1.03; from 98 to 102 percent can be", large.getMessage());
  }
}
