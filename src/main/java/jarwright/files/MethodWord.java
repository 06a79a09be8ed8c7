package jarwright.files;

import jarwright.ask.Untested;
import jarwright.problem.Nearest;
import jarwright.problem.Refused;
import jarwright.process.Method;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Understands the method of a plan or canner; people also name ways here that are none. */
final class MethodWord {
  private static final List<String> BOILING = List.of("water-bath", "waterbath", "bath");
  private static final String PRESSURE = "pressure";

  private MethodWord() {}

  /** The method that the key names; none, or a problem, otherwise. */
  static Optional<Method> read(Fields fields, String key) throws IOException, Refused {
    Optional<String> word = fields.plainWord(key);
    Optional<Method> method = word.flatMap(Method::named);
    if (word.isEmpty() || method.isPresent()) {
      return method;
    }
    for (Untested untested : UntestedRows.read()) {
      if (untested.isCalled(word.get())) {
        fields.problem(key, untested.what() + ": " + untested.why(), untested.remedy());
        return Optional.empty();
      }
    }
    fields.problem(key, "\"" + fields.said(key) + "\" is not known", remedy(word.get()));
    return Optional.empty();
  }

  private static String remedy(String word) {
    if (BOILING.stream().anyMatch(word::contains)) {
      return "did you mean " + Method.BOILING_WATER + "?";
    }
    if (word.contains(PRESSURE)) {
      return "write " + Method.DIAL_GAUGE + " or " + Method.WEIGHTED_GAUGE + ", as your canner has";
    }
    return Nearest.remedy(word, Method.ids());
  }
}
