package jarwright.files;

import jarwright.ask.Untested;
import jarwright.problem.Refused;
import java.io.IOException;
import java.util.Optional;

/** Understands what a canner is called: some names say that it is none. */
final class CannerWord {
  private CannerWord() {}

  /** The name under the key; none, or a problem, otherwise. */
  static Optional<String> read(Fields fields, String key) throws IOException, Refused {
    Optional<String> name = fields.text(key);
    if (name.isEmpty()) {
      return name;
    }
    Optional<Untested> unfit = PotRows.unfit(name.get());
    if (unfit.isEmpty()) {
      return name;
    }
    fields.problem(
        key,
        "\"" + fields.said(key) + "\" cannot be used as a canner. " + reason(unfit.get()),
        unfit.get().remedy() + " If yours is a canner, give it the name of one.");
    return Optional.empty();
  }

  /** What the pot, machine or way is, why nothing can be canned in it, and who says so. */
  static String reason(Untested unfit) {
    String why = unfit.why();
    String sentence = why.endsWith(".") ? why.substring(0, why.length() - 1) : why;
    return unfit.what() + ": " + sentence + " (" + unfit.source() + ")";
  }
}
