package jarwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What fuzzing found, or only just did not, is read again in every build. */
class CorpusTest {
  private static final Path CORPUS = Path.of("src", "test", "resources", "fuzz");

  /** Far beyond what any of them takes, so that only a hang fails. */
  private static final Duration LONG = Duration.ofMinutes(1);

  private static final int LARGE = 250_000;

  @ParameterizedTest
  @EnumSource(Target.class)
  void eachIsReadOrRefused(Target target) throws IOException {
    for (Path file : files(CORPUS.resolve(target.id()))) {
      byte[] input = Files.readAllBytes(file);
      assertTimeoutPreemptively(LONG, () -> target.read(input), file::toString);
    }
  }

  @Test
  void everyFolderIsATargets() throws IOException {
    List<String> ids = Stream.of(Target.values()).map(Target::id).sorted().toList();
    assertEquals(ids, files(CORPUS).stream().map(p -> p.getFileName().toString()).toList());
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  /**
   * A great deal of a small thing: where reading takes time or memory that grows with the square.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "plan-yaml~~[",
        "plan-yaml~~k: v\\n",
        "plan-yaml~batches:\\n~  - product: plums\\n",
        "plan-yaml~kitchen:\\n  canners:\\n~    - name: p\\n",
        "plan-yaml~a: \"~\\\\",
        "plan-csv~~product,",
        "plan-csv~product,pack\\n~x,y,z\\n",
        "plan-csv~product,pack\\n~,",
        "plan-csv~product,pack\\n~\"",
        "plan-csv~product,pack\\n~a\"b,c\\n",
        "outcome~lot,load\\n~x\\n",
        "outcome~lot,unsealed\\n260824A-T,~1 ",
        "label-stocks~~- id: x\\n",
        "ledger~~\\n",
        "ledger~number,when,lot,jar,event,detail,by,check\\n~x",
        "ledger-lines~2026-08-24T12:00:00Z,,,opened,household=19caaafa4efb31f5,\\n~x\\n",
        "batch-record~~lot: x\\n",
        "tables~u~\\n",
        "tables~uwords\\n\"~\\n",
        "codes~LOT ~A",
        "codes~~1/",
        "request~GET /~A",
        "request~GET /\\nHost: localhost:8080\\nCookie: ~;",
        "template~~${(",
        "markup~~<panel>",
        "markup~<p>~<b>"
      })
  void aLotOfItIsReadOrRefused(String target, String start, String again) {
    String before = start == null ? "" : start.replace("\\n", "\n");
    String piece = again.replace("\\n", "\n");
    byte[] input = (before + piece.repeat(LARGE / piece.length())).getBytes(StandardCharsets.UTF_8);
    assertTimeoutPreemptively(LONG, () -> Target.named(target).read(input));
  }
}
