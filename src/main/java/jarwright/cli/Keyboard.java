package jarwright.cli;

import jarwright.problem.Place;
import jarwright.problem.Refused;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Asks a person at a terminal, one question a line, until the answer can be understood. */
final class Keyboard {
  private final PrintStream out;
  private final BufferedReader in;

  private Keyboard(PrintStream out, BufferedReader in) {
    this.out = out;
    this.in = in;
  }

  /** Empty where nobody sits at a terminal. */
  static Optional<Keyboard> of(Call call) {
    return call.surroundings().keyboard().map(in -> new Keyboard(call.out(), in));
  }

  void say(String line) {
    out.println(line);
  }

  /**
   * The answer, without spaces around it.
   *
   * @param fault what is wrong with an answer; empty where it will do
   * @throws Refused where the input ends before the answer
   */
  String ask(String question, Function<String, Optional<String>> fault)
      throws IOException, Refused {
    while (true) {
      out.print(question + " ");
      out.flush();
      String line = in.readLine();
      if (line == null) {
        out.println();
        throw new Refused(
            Place.wholeFile("the terminal"),
            "the answers ended early",
            "they are kept: the same command goes on from there");
      }
      String answer = line.strip();
      Optional<String> wrong = fault.apply(answer);
      if (wrong.isEmpty()) {
        return answer;
      }
      out.println("  " + wrong.get());
    }
  }

  /** Whether the answer is yes; only a plain yes or no will do. */
  boolean confirm(String question) throws IOException, Refused {
    String answer =
        ask(
            question + " (yes or no)",
            a -> isOneOf(a, "yes", "y", "no", "n") ? Optional.empty() : Optional.of("yes or no?"));
    return isOneOf(answer, "yes", "y");
  }

  private static boolean isOneOf(String answer, String... words) {
    String small = answer.toLowerCase(Locale.ROOT);
    for (String word : words) {
      if (small.equals(word)) {
        return true;
      }
    }
    return false;
  }
}
