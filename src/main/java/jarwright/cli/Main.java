package jarwright.cli;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;

/** Starts the program and ends it with the command's exit status. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    Outlet out = new Outlet(new FileOutputStream(FileDescriptor.out));
    Outlet err = new Outlet(new FileOutputStream(FileDescriptor.err));
    Surroundings surroundings =
        new Surroundings(
            stream(out, encoding("stdout")),
            stream(err, encoding("stderr").or(() -> encoding("stdout"))),
            Clock.system(ZoneId.systemDefault()),
            Path.of(""),
            System.getenv(),
            keyboard());
    int status = new Program(surroundings).run(args, out);
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

  /** The character set of the terminal, where there is one and it is known; each Java asks so. */
  private static Optional<String> encoding(String stream) {
    String named = System.getProperty(stream + ".encoding");
    return Optional.ofNullable(named)
        .or(() -> Optional.ofNullable(System.getProperty("sun." + stream + ".encoding")))
        .filter(Charset::isSupported);
  }

  /** UTF-8 unless the terminal is known to have another character set. */
  private static PrintStream stream(Outlet out, Optional<String> encoding) {
    Charset charset = encoding.map(Charset::forName).orElse(StandardCharsets.UTF_8);
    return charset.equals(StandardCharsets.UTF_8)
        ? new PrintStream(out, false, charset)
        : new SpelledStream(out, charset);
  }
}
