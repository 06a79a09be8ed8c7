package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.plan.Kitchen;
import jarwright.plan.OwnTime;
import jarwright.problem.Problem;
import jarwright.problem.Problems;
import jarwright.quantity.Fraction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The household's own times of hand work, as a kitchen writes them. */
class OwnTimesTest {
  @TempDir Path folder;

  private static List<OwnTime> read(String times, Problems problems) throws Exception {
    String text = "altitude: 420 m\ntimes:\n" + times;
    TextFile file = TextFile.of("kitchen.yaml", text.getBytes(StandardCharsets.UTF_8));
    Written.Keys keys = (Written.Keys) YamlTree.read(file, problems);
    return new KitchenReader(keys, new PlanWords(ProcessTables.ofProgram()), problems)
        .read()
        .map(Kitchen::times)
        .orElse(List.of());
  }

  @Test
  void areReadWithWhatTheyAreFor() throws Exception {
    Problems problems = new Problems();
    List<OwnTime> times =
        read(
            """
              - {task: heat jars, minutes: 12}
              - {task: prepare, of: fruit, minutes: 5 to 10, minutes-each: 1/2-1.5}
            """,
            problems);
    assertEquals(List.of(), problems.list());
    OwnTime jars = times.get(0);
    assertEquals("heat-jars", jars.task());
    assertEquals(new OwnTime.Span(Fraction.of(12), Fraction.of(12)), jars.fixed());
    assertEquals(Optional.empty(), jars.of());
    OwnTime fruit = times.get(1);
    assertEquals(Optional.of("fruit"), fruit.of());
    assertEquals(Optional.of(new OwnTime.Span(Fraction.of(1, 2), Fraction.of(3, 2))), fruit.each());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "{task: process, minutes: 5}~\"process\" is not known",
        "{task: cook, minutes: soon}~\"soon\" is no span of minutes",
        "{task: cook, minutes: 30 to 20}~runs upwards",
        "{task: cook, minutes: 5000}~longer than a day",
        "{task: cook}~minutes: is missing",
        "{minutes: 5}~task: is missing",
        "{task: cook, minutes: 5, hours: 1}~a time has no key \"hours\"",
        "cook~a time has keys",
      })
  void whatCannotBeIsTold(String time, String told) throws Exception {
    Problems problems = new Problems();
    read("  - " + time + "\n", problems);
    assertTrue(
        problems.list().stream().map(Problem::text).anyMatch(t -> t.contains(told)),
        problems.list().toString());
  }

  @Test
  void aProductThatThereIsNotIsTold() throws Exception {
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(
        plan,
        """
        kitchen:
          altitude: 420 m
          canners:
            - {name: pot, method: boiling-water}
          times:
            - {task: prepare, of: plums-halved-or-hole, minutes: 5}
        batches:
          - {product: plums-halved-or-whole, pack: raw, jar: quart, jars: 7, date: 2026-08-24}
        """);
    Problems problems = new Problems();
    new PlanReader(ProcessTables.ofProgram()).read(plan, Optional.empty(), problems);
    String told = problems.list().toString();
    assertTrue(told.contains("did you mean plums-halved-or-whole?"), told);
  }
}
