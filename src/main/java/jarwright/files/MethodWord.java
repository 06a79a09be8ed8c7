package jarwright.files;

import jarwright.ask.Said;
import jarwright.ask.Untested;
import jarwright.problem.Refused;
import jarwright.process.Method;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Understands the method of a plan or canner; people also name ways here that are none. */
final class MethodWord {
  private MethodWord() {}

  /** The method that the key names; none, or a problem, otherwise. */
  static Optional<Method> read(Fields fields, String key, PlanWords words)
      throws IOException, Refused {
    Optional<String> word = fields.plainWord(key);
    Optional<Method> method = word.flatMap(Method::named);
    if (word.isEmpty() || method.isPresent()) {
      return method;
    }
    Optional<Untested> untested = untested(word.get());
    if (untested.isPresent()) {
      fields.problem(key, CannerWord.reason(untested.get()), untested.get().remedy());
      return Optional.empty();
    }
    List<String> meant =
        words
            .hear(word.get())
            .filter(s -> s.choices().jars().isEmpty() && s.pack().isEmpty())
            .map(Said::methods)
            .orElse(List.of())
            .stream()
            .map(Method::id)
            .toList();
    return PlanWords.one(fields, key, meant, Method.ids()).flatMap(Method::named);
  }

  private static Optional<Untested> untested(String word) throws IOException, Refused {
    Optional<Untested> pot = PotRows.unfit(word);
    return pot.isPresent()
        ? pot
        : UntestedRows.read().stream().filter(u -> u.isCalled(word)).findFirst();
  }
}
