package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.ask.Pots;
import jarwright.ask.Untested;
import jarwright.problem.Refused;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The program's own list of pots that are no canners. */
class PotRowsTest {
  @Test
  void everyNameHasItsReason() throws Exception {
    Set<String> refusals =
        UntestedRows.read().stream().map(Untested::key).collect(Collectors.toSet());
    for (Pots.Named one : PotRows.read(ProcessTables.resource(PotRows.FILE))) {
      assertTrue(refusals.containsAll(one.refusal().stream().toList()), one.toString());
      Optional<String> found = PotRows.unfit("our " + one.name() + " 2").map(Untested::key);
      assertEquals(one.refusal(), found, one.toString());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "Oven,en,oven,a source~\"Oven\" is not small words",
        "oven,xx,oven,a source~a name needs its language",
        "oven,en,oven,~a name needs its language and its source",
        "oven,en,oven~3 cells"
      })
  void aFaultyRowStopsTheProgram(String row, String fault) {
    Refused refused =
        assertThrows(
            Refused.class, () -> PotRows.read("names,language,refusal,source\n" + row + "\n"));
    assertTrue(refused.getMessage().contains(fault), refused.getMessage());
  }
}
