package jarwright.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Blows up what the fuzzer has found to be worth keeping to just under a megabyte, by a piece of it
 * that comes again and again: where time or memory grows faster than the input.
 */
public final class Grown {
  private static final int LARGE = 999_000;
  private static final int SEED = 20_260_824;

  private Grown() {}

  /** The target, its corpus, and for how many seconds. Ends with 1 if anything was found. */
  public static void main(String... args) throws IOException {
    Target target = Target.named(args[0]);
    long end = System.nanoTime() + Duration.ofSeconds(Long.parseLong(args[2])).toNanos();
    Path found = Path.of(args[1]).resolveSibling(target.id() + "-grown");
    List<Path> corpus = new ArrayList<>(files(Path.of(args[1])));
    Random random = new Random(SEED);
    Collections.shuffle(corpus, random);
    int read = 0;
    int finds = 0;
    // Round and round, each time with other pieces.
    while (System.nanoTime() < end && !corpus.isEmpty()) {
      for (Path file : corpus) {
        byte[] small = Files.readAllBytes(file);
        if (System.nanoTime() > end) {
          break;
        }
        int from = random.nextInt(small.length + 1);
        int to = from + random.nextInt(Math.min(small.length - from, longest(random)) + 1);
        byte[] input = grown(small, from, to);
        read++;
        try {
          Allowance.hold(target::read, input);
        } catch (Throwable e) {
          finds++;
          Files.write(
              Files.createDirectories(found).resolve(file.getFileName() + "-" + read), input);
          System.out.println(
              file.getFileName()
                  + ", bytes "
                  + from
                  + " to "
                  + to
                  + " repeated: "
                  + e
                  + " at "
                  + (e.getStackTrace().length > 0 ? e.getStackTrace()[0] : "?"));
        }
      }
    }
    System.out.println(target.id() + ": " + read + " grown inputs read, " + finds + " finds");
    System.exit(finds > 0 ? 1 : 0);
  }

  /** Mostly a few bytes, as words and brackets are, or whole lines. */
  private static int longest(Random random) {
    return random.nextBoolean() ? 8 : 200;
  }

  private static byte[] grown(byte[] small, int from, int to) {
    byte[] piece =
        to == from
            ? "\n".getBytes(StandardCharsets.UTF_8)
            : java.util.Arrays.copyOfRange(small, from, to);
    ByteArrayOutputStream input = new ByteArrayOutputStream(LARGE);
    input.write(small, 0, to);
    while (input.size() + piece.length + small.length - to < LARGE) {
      input.write(piece, 0, piece.length);
    }
    input.write(small, to, small.length - to);
    return input.toByteArray();
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }
}
