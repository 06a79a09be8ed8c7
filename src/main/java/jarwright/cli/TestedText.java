package jarwright.cli;

import jarwright.page.Wording;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.TableRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Says in one line, in a language, which canners, packs and jars of a product are tested. */
final class TestedText {
  private final Wording words;

  TestedText(Wording words) {
    this.words = words;
  }

  /** {@code boiling-water canner, raw pack: pints, quarts; pressure canner, hot pack: quarts}. */
  String of(List<TableRow> rows) {
    Map<Method, Map<String, Set<JarSize>>> tested = new TreeMap<>();
    for (TableRow row : rows) {
      tested
          .computeIfAbsent(row.method(), m -> new TreeMap<>())
          .computeIfAbsent(row.pack().id(), p -> new TreeSet<>())
          .add(row.jar());
    }
    List<String> parts = new ArrayList<>();
    Map<String, Set<JarSize>> dial = tested.getOrDefault(Method.DIAL_GAUGE, Map.of());
    boolean either = dial.equals(tested.get(Method.WEIGHTED_GAUGE));
    tested.forEach(
        (method, settings) -> {
          if (method == Method.BOILING_WATER) {
            parts.addAll(lines("boiling", settings));
          } else if (!either) {
            parts.addAll(lines(method.id(), settings));
          } else if (method == Method.DIAL_GAUGE) {
            parts.addAll(lines("pressure", settings));
          }
        });
    return String.join("; ", parts);
  }

  private List<String> lines(String canner, Map<String, Set<JarSize>> settings) {
    List<String> lines = new ArrayList<>();
    settings.forEach(
        (pack, jars) ->
            lines.add(
                words.text("process.canner." + canner)
                    + ", "
                    + words.text("process.packs." + pack)
                    + ": "
                    + String.join(
                        ", ",
                        jars.stream().map(j -> words.text("jar." + j.id() + ".other")).toList())));
    return lines;
  }
}
