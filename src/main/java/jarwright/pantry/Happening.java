package jarwright.pantry;

import jarwright.problem.Nearest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What an event says happened. The kinds are closed: an unknown one is from a newer program. */
public sealed interface Happening
    permits Opened,
        Planned,
        Cancelled,
        LoadRun,
        Outcome,
        JarStep,
        Spoiled,
        Checked,
        Imported,
        Vouched,
        Undone {

  /** The word in the ledger's event column. */
  String kind();

  /** All particulars; {@link #read} of them gives an equal value. */
  Detail detail();

  /**
   * Reads an event of the given kind.
   *
   * @throws IllegalArgumentException when the kind is unknown or a particular is missing or wrong
   */
  static Happening read(String kind, Detail detail) {
    Function<Detail, Happening> reader = Readers.BY_KIND.get(kind);
    if (reader == null) {
      List<String> known = new ArrayList<>(Readers.BY_KIND.keySet());
      throw new IllegalArgumentException(
          "\"" + Shown.of(kind) + "\" is no event; " + Nearest.remedy(kind, known));
    }
    return reader.apply(detail);
  }

  /** Which kind is read how. */
  final class Readers {
    private static final Map<String, Function<Detail, Happening>> BY_KIND = byKind();

    private Readers() {}

    private static Map<String, Function<Detail, Happening>> byKind() {
      Map<String, Function<Detail, Happening>> readers = new LinkedHashMap<>();
      readers.put(Opened.KIND, Opened::from);
      readers.put(Planned.KIND, Planned::from);
      readers.put(Cancelled.KIND, Cancelled::from);
      readers.put(LoadRun.KIND, LoadRun::from);
      readers.put(Outcome.KIND, Outcome::from);
      readers.put(Imported.KIND, Imported::from);
      readers.put(Vouched.KIND, Vouched::from);
      readers.put(Spoiled.KIND, Spoiled::from);
      readers.put(Checked.KIND, Checked::from);
      readers.put(Undone.KIND, Undone::from);
      readers.putAll(JarStep.readers());
      return readers;
    }
  }
}
