package jarwright.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * All runs of one program at one size.
 *
 * @param part of the measuring, as {@code growth}
 * @param what was run
 * @param size in labels, jars, events or batches
 */
record Measured(String part, String what, int size, List<Run> runs) {

  /**
   * A whole process.
   *
   * @param wall seconds by the clock
   * @param processor seconds of all its threads
   * @param peak memory in MB
   */
  record Run(double wall, double processor, double peak) {}

  /** The rows of a CSV file, gathered; round 0 warms the disk's cache and does not count. */
  static List<Measured> read(Path csv) throws IOException {
    Map<String, Measured> all = new LinkedHashMap<>();
    List<String> lines = Files.readAllLines(csv);
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",");
      if (!cells[3].equals("0")) {
        String key = cells[0] + " " + cells[1] + " " + cells[2];
        int size = Integer.parseInt(cells[2]);
        all.computeIfAbsent(key, k -> new Measured(cells[0], cells[1], size, new ArrayList<>()))
            .runs()
            .add(
                new Run(
                    Double.parseDouble(cells[4]),
                    Double.parseDouble(cells[5]),
                    Double.parseDouble(cells[6]) / 1024));
      }
    }
    return List.copyOf(all.values());
  }

  double wall() {
    return median(Run::wall);
  }

  double processor() {
    return median(Run::processor);
  }

  /** The highest of all runs, in MB. */
  double peak() {
    return runs.stream().mapToDouble(Run::peak).max().orElseThrow();
  }

  private double median(ToDoubleFunction<Run> figure) {
    double[] sorted = runs.stream().mapToDouble(figure).sorted().toArray();
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}
