package jarwright.process;

import static java.util.stream.Collectors.joining;

import jarwright.files.ProcessTables;
import jarwright.problem.Refused;
import jarwright.quantity.Altitude;
import java.io.IOException;

/** The program's own book for tests, and its answers in one line. */
public final class Book {
  private static final ProcessBook BOOK = read();

  private Book() {}

  public static ProcessBook get() {
    return BOOK;
  }

  public static Product product(String id) {
    return BOOK.product(id).orElseThrow(() -> new AssertionError("no product " + id));
  }

  static Answer ask(String product, String method, String pack, String jar, String altitude) {
    return BOOK.lookUp(
        new Setting(
            product(product),
            Method.named(method).orElseThrow(),
            Pack.named(pack).orElseThrow(),
            JarSize.named(jar).orElseThrow(),
            Altitude.parse(altitude)));
  }

  /** {@code 40 min}, {@code 15 min at 6 psi or 10 min at 11 psi}, {@code not covered: JAR}. */
  static String say(Answer answer) {
    return answer.fold(
        found ->
            found.rows().stream().map(Book::say).collect(joining(" or "))
                + found.printedFor().map(j -> ", as " + j).orElse(""),
        closed -> "not recommended",
        gap -> "not covered: " + gap.reason());
  }

  static String say(TableRow row) {
    TestedProcess process = row.process().orElseThrow();
    return process.minutes() + " min" + process.pressure().map(p -> " at " + p).orElse("");
  }

  private static ProcessBook read() {
    try {
      return ProcessTables.ofProgram().book();
    } catch (IOException | Refused e) {
      throw new AssertionError(e);
    }
  }
}
