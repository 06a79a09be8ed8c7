package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.batch.BatchReckoner;
import jarwright.lot.LotCode;
import jarwright.plan.BatchPlan;
import jarwright.plan.Plan;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every plan in the folder is refused in exactly the words beside it. A plan may have a kitchen
 * file beside it too; tables have the sound one. To see what changed: {@code
 * -Dwrite.expected=true}.
 */
class BadPlansTest {
  private static final Path FOLDER = Path.of("src/test/resources/bad-plans");
  private static final String EXPECTED = ".expected";

  @TestFactory
  Stream<DynamicTest> isRefusedInTheseWords() throws Exception {
    return plans().stream().map(plan -> DynamicTest.dynamicTest(name(plan), () -> check(plan)));
  }

  @Test
  void noExpectationIsWithoutItsPlan() throws Exception {
    List<String> names = plans().stream().map(BadPlansTest::stem).toList();
    try (Stream<Path> files = Files.list(FOLDER)) {
      files
          .filter(f -> name(f).endsWith(EXPECTED))
          .forEach(f -> assertTrue(names.contains(stem(f)), name(f)));
    }
    assertEquals(names.size(), names.stream().distinct().count());
  }

  private static List<Path> plans() throws Exception {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .filter(f -> name(f).endsWith(".yaml") || name(f).endsWith(".csv"))
          .sorted()
          .toList();
    }
  }

  private static void check(Path plan) throws Exception {
    Refused refused = assertThrows(Refused.class, () -> readAndReckon(plan));
    String told = refused.getMessage().replace(FOLDER + "/", "") + "\n";
    Path expected = FOLDER.resolve(stem(plan) + EXPECTED);
    if (Boolean.getBoolean("write.expected")) {
      Files.writeString(expected, told);
    }
    assertEquals(Files.readString(expected, StandardCharsets.UTF_8), told);
  }

  private static void readAndReckon(Path file) throws Exception {
    ProcessTables tables = ProcessTables.ofProgram();
    Problems problems = new Problems();
    Optional<Plan> plan = new PlanReader(tables).read(file, kitchen(file), problems);
    if (plan.isPresent()) {
      BatchReckoner reckoner = new BatchReckoner(tables.bookFor(plan.get()), plan.get().kitchen());
      for (BatchPlan batch : plan.get().batches()) {
        reckoner.reckon(batch, new LotCode(batch.date(), 'A'), problems);
      }
    }
    problems.refuse();
  }

  private static Optional<Path> kitchen(Path plan) {
    String name = name(plan).endsWith(".csv") ? "sound" : stem(plan);
    return Optional.of(FOLDER.resolve(name + ".kitchen")).filter(Files::exists);
  }

  private static String name(Path file) {
    return file.getFileName().toString();
  }

  private static String stem(Path file) {
    return name(file).substring(0, name(file).lastIndexOf('.'));
  }
}
