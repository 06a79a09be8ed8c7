package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.pantry.Finding;
import jarwright.pantry.Grade;
import jarwright.pantry.VerdictRule;
import jarwright.pantry.VerdictRules;
import jarwright.problem.Refused;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class VerdictTableTest {
  private String text;

  @BeforeEach
  void readTheTable() throws Exception {
    try (InputStream in =
        VerdictTableTest.class.getResourceAsStream("/jarwright/pantry/verdict-rules.csv")) {
      text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private String fault(String from, String to) {
    assertTrue(text.contains(from), from);
    Refused refused =
        assertThrows(Refused.class, () -> VerdictTable.read(text.replaceFirst(from, to)));
    return refused.getMessage();
  }

  @Test
  void everyFindingHasARuleAndEveryRuleASource() throws Exception {
    VerdictRules rules = VerdictTable.read();
    assertEquals(
        Arrays.stream(Finding.values()).toList(),
        rules.all().stream().map(VerdictRule::finding).distinct().sorted().toList());
    for (VerdictRule rule : rules.all()) {
      assertEquals(!rule.published(), rule.source().startsWith("common practice, no source"));
    }
  }

  /** Nothing that speaks against a whole load may leave its jars on a shelf. */
  @Test
  void everyFaultOfALoadAllowsTwoHoursAndNoMore() throws Exception {
    List<Finding> ofLoad =
        Arrays.stream(Finding.values())
            .filter(f -> f.compareTo(Finding.SOUND) > 0 && f.compareTo(Finding.LEAKS) < 0)
            .toList();
    assertEquals(16, ofLoad.size());
    for (VerdictRule rule : VerdictTable.read().all()) {
      if (ofLoad.contains(rule.finding()) && rule.verdict() != Grade.THROW_AWAY) {
        assertEquals(Grade.RECAN, rule.verdict(), rule.id());
        assertEquals(2, rule.hours().orElseThrow(), rule.id());
      }
    }
  }

  /**
   * CDC, Home-Canned Foods: what leaks, bulges, spurts or is moldy is thrown away, never tasted.
   */
  @Test
  void whateverLooksSpoiledIsThrownAway() throws Exception {
    List<Finding> signs =
        List.of(
            Finding.LEAKS,
            Finding.BULGES,
            Finding.SPURTS,
            Finding.SMELL,
            Finding.MOLD,
            Finding.COLOR);
    for (VerdictRule rule : VerdictTable.read().all()) {
      if (signs.contains(rule.finding())) {
        assertEquals(Grade.THROW_AWAY, rule.verdict(), rule.id());
      }
    }
  }

  @Test
  void aFaultyTableStopsTheProgramWithFileAndLine() {
    assertTrue(
        fault("sound,sound,shelf", "sound,sound,attic")
            .startsWith("verdict-rules.csv:2: the program's own table is faulty: \"attic\""));
    assertTrue(fault("recan,2,3", "recan,,3").contains("has hours if it says recan"));
    assertTrue(fault("refrigerate,,2", "refrigerate,,").contains("has days"));
    assertTrue(fault("heat-lost,heat-lost", "heat-lost,heat-last").contains("heat-last"));
    assertTrue(fault("published", "rumour").contains("rumour"));
    assertTrue(fault("half-lost-kept", "half-lost").contains("half-lost comes twice"));
    assertTrue(fault("some-lost,some-lost", "some-lost,half-lost").contains("some-lost"));
    assertTrue(fault("some-lost,use-first", "some-lost,shelf").contains("sound jar"));
  }
}
