package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Output that goes into a file on a full disk, into a pipe that was closed, or comes in garbled.
 */
class OutletTest {
  private final ByteArrayOutputStream told = new ByteArrayOutputStream();

  private int run(OutputStream to, String... args) {
    Outlet outlet = new Outlet(to);
    Surroundings here =
        new Surroundings(
            new PrintStream(outlet, false, StandardCharsets.UTF_8),
            new PrintStream(told, true, StandardCharsets.UTF_8),
            Clock.systemUTC(),
            Path.of(""),
            Map.of());
    return new Program(here).run(args, outlet);
  }

  private static OutputStream failing(String why) {
    return new OutputStream() {
      @Override
      public void write(int character) throws IOException {
        throw new IOException(why);
      }
    };
  }

  /** Listings shorter and longer than any buffer. */
  @ParameterizedTest
  @CsvSource({
    "--help, No space left on device, 3",
    "--help, Broken pipe, 0",
    "process --all, No space left on device, 3",
    "process --all, The pipe is being closed, 0",
    "nonsense, No space left on device, 2"
  })
  void whatCouldNotBeWrittenIsTold(String words, String why, int status) {
    assertEquals(status, run(failing(why), words.split(" ")));
    assertEquals(
        status == 3, told.toString(StandardCharsets.UTF_8).contains("could be written: " + why));
  }

  @Test
  void aSoundOutletChangesNothing() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertEquals(0, run(out, "--version"));
    assertTrue(out.toString(StandardCharsets.UTF_8).startsWith("jarwright "));
    assertEquals(0, told.size());
  }

  /** As Java hands over u with two dots where the locale is C. */
  @Test
  void lettersLostOnTheWayInAreNotRecorded() {
    assertEquals(
        2, run(new ByteArrayOutputStream(), "take", "plums", "--note", "f\uFFFD\uFFFDr guests"));
    assertTrue(told.toString(StandardCharsets.UTF_8).contains("LC_ALL=C.UTF-8"));
  }
}
