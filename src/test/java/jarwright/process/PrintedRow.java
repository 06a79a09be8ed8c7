package jarwright.process;

import jarwright.quantity.GaugePressure;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** A line of process-times.csv as a plain split at its commas gives it: the tests' own reading. */
public record PrintedRow(
    String product,
    String method,
    String pack,
    String jar,
    int from,
    int to,
    int minutes,
    Optional<GaugePressure> pressure) {
  /** Stands for a cell without minutes. */
  private static final int NONE = -1;

  public static List<PrintedRow> all() {
    try (InputStream in =
        PrintedRow.class.getResourceAsStream("/jarwright/process/process-times.csv")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().skip(1).map(PrintedRow::of).toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static PrintedRow of(String line) {
    String[] cells = line.split(",", 10);
    return new PrintedRow(
        cells[0],
        cells[1],
        cells[2],
        cells[3],
        Integer.parseInt(cells[4]),
        cells[5].isEmpty() ? Integer.MAX_VALUE : Integer.parseInt(cells[5]),
        cells[6].equals("process") ? Integer.parseInt(cells[7]) : NONE,
        cells[8].isEmpty()
            ? Optional.empty()
            : Optional.of(GaugePressure.psi(Integer.parseInt(cells[8]))));
  }

  public boolean isFor(String asked) {
    return pack.equals(asked) || pack.equals("raw-or-hot");
  }

  /** Land below the sea is as the sea's own shore. */
  boolean holds(int feet) {
    return Math.max(0, feet) >= from && feet <= to;
  }

  public boolean isTested() {
    return minutes != NONE;
  }
}
