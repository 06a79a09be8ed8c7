package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.pantry.JarStep;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several programs at one ledger, and programs that are killed. */
class LedgerProgramsTest {
  /** {@code mvn test -Dcrash.kills=500} for a long run. */
  private static final int KILLS = Integer.getInteger("crash.kills", 20);

  @TempDir Path folder;

  private List<String> words() throws Exception {
    List<String> words = new ArrayList<>();
    LedgerFile.in(folder)
        .read()
        .each(
            event -> {
              if (event.what() instanceof JarStep step) {
                words.add(step.word());
              }
            });
    return words;
  }

  @Test
  void eightProgramsAtOnceLoseNothing() throws Exception {
    int each = 200;
    List<Process> programs = new ArrayList<>();
    for (int p = 1; p <= 8; p++) {
      programs.add(AppendingProgram.start(folder, "program" + p, each));
    }
    for (Process program : programs) {
      program.getInputStream().readAllBytes();
      assertEquals(0, program.waitFor());
    }
    Ledger ledger = LedgerFile.in(folder).read();
    List<String> words = words();
    assertEquals(1_600, words.size());
    assertEquals(1_600, new HashSet<>(words).size());
    assertEquals(1_601, ledger.last());
    assertEquals(List.of(), ledger.remarks());
    for (int p = 1; p <= 8; p++) {
      String name = "program" + p + "-";
      assertEquals(
          IntStream.rangeClosed(1, each).mapToObj(i -> name + i).toList(),
          words.stream().filter(w -> w.startsWith(name)).toList());
    }
  }

  @Test
  void aProgramKilledAtAnyMomentLosesNothingItHasTold() throws Exception {
    long seed = System.nanoTime();
    Random random = new Random(seed);
    List<String> told = new ArrayList<>();
    for (int kill = 1; kill <= KILLS; kill++) {
      told.addAll(toldBeforeKilled("run" + kill, random));
      List<String> words = words();
      Set<String> once = new HashSet<>(words);
      String run = "seed " + seed + ", kill " + kill;
      assertEquals(words.size(), once.size(), run + ": an event is there twice");
      assertTrue(once.containsAll(told), run + ": an event is lost");
      assertTrue(words.size() <= told.size() + kill, run + ": events nobody asked for");
    }
  }

  /** What the program said was on the disk, up to the moment it was killed. */
  private List<String> toldBeforeKilled(String name, Random random) throws IOException {
    Process program = AppendingProgram.start(folder, name, Integer.MAX_VALUE);
    List<String> told = new ArrayList<>();
    int before = random.nextInt(25);
    try (BufferedReader out = program.inputReader(StandardCharsets.UTF_8)) {
      while (told.size() <= before) {
        told.add(Objects.requireNonNull(out.readLine(), "the program ended by itself"));
      }
      // Some part of the way into the next append, which takes about so long.
      long until = System.nanoTime() + random.nextInt(4_000_000);
      while (System.nanoTime() < until) {
        Thread.onSpinWait();
      }
      // Unlike the process's own method, the handle's leaves what was told to be read.
      program.toHandle().destroyForcibly();
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        told.add(line);
      }
      program.waitFor();
    } catch (InterruptedException e) {
      throw new IOException(e);
    } finally {
      program.destroyForcibly();
    }
    return told;
  }
}
