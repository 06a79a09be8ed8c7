package jarwright.cli;

import java.io.BufferedOutputStream;
import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;

/** Starts the program and ends it with the command's exit status. */
public final class Main {
  private static final int BUFFER = 8_192;

  private Main() {}

  public static void main(String[] args) {
    Surroundings surroundings =
        new Surroundings(
            stream(FileDescriptor.out),
            stream(FileDescriptor.err),
            Clock.system(ZoneId.systemDefault()),
            Path.of(""),
            System.getenv(),
            keyboard());
    int status = new Program(surroundings).run(args);
    surroundings.out().flush();
    surroundings.err().flush();
    System.exit(status);
  }

  /**
   * Of a terminal, where both input and output are one. Newer Java versions give a console for
   * pipes too, unless they are asked for the plain one.
   */
  private static Optional<BufferedReader> keyboard() {
    System.setProperty("jdk.console", "java.base");
    return Optional.ofNullable(System.console()).map(c -> new BufferedReader(c.reader()));
  }

  /** UTF-8 unless the terminal is known to have another character set. */
  private static PrintStream stream(FileDescriptor descriptor) {
    String terminal =
        System.getProperty("stdout.encoding", System.getProperty("sun.stdout.encoding"));
    Charset charset =
        terminal != null && Charset.isSupported(terminal)
            ? Charset.forName(terminal)
            : StandardCharsets.UTF_8;
    OutputStream out = new BufferedOutputStream(new FileOutputStream(descriptor), BUFFER);
    return charset.equals(StandardCharsets.UTF_8)
        ? new PrintStream(out, false, charset)
        : new SpelledStream(out, charset);
  }
}
