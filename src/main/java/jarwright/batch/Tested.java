package jarwright.batch;

import jarwright.process.JarSize;
import jarwright.process.TableRow;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Says in one line what a product has tested processes for. */
public final class Tested {
  private Tested() {}

  /** {@code boiling-water raw: pint, quart; dial-gauge hot: quart}. */
  public static String summary(List<TableRow> rows) {
    Map<String, Set<JarSize>> settings = new TreeMap<>();
    for (TableRow row : rows) {
      settings
          .computeIfAbsent(row.method() + " " + row.pack(), s -> new TreeSet<>())
          .add(row.jar());
    }
    StringBuilder out = new StringBuilder();
    settings.forEach(
        (setting, jars) -> {
          out.append(out.isEmpty() ? "" : "; ").append(setting).append(": ");
          out.append(String.join(", ", jars.stream().map(JarSize::id).toList()));
        });
    return out.toString();
  }
}
