package jarwright.files;

import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.GelPoints;
import jarwright.process.Source;
import jarwright.quantity.Altitude;
import jarwright.quantity.Temperature;
import java.io.IOException;
import java.util.List;

/** Reads the program's own gel-points.csv. */
public final class GelPointTable {
  private static final String FILE = "gel-points.csv";
  private static final List<String> COLUMNS = List.of("altitude_ft", "gel_f", "source");

  private GelPointTable() {}

  /**
   * The gel points that are part of the program.
   *
   * @throws Refused with every fault found in them, worded as the program's own
   * @throws IOException where the program's own file is damaged
   */
  public static GelPoints read() throws IOException, Refused {
    Problems faults = new Problems();
    TableText table = new TableText(FILE, ProcessTables.resource(FILE), COLUMNS, faults);
    List<GelPoints.Row> rows =
        table.read(
            row ->
                new GelPoints.Row(
                    Altitude.feet(row.number("altitude_ft")),
                    Temperature.fahrenheit(row.number("gel_f")),
                    new Source(row.get("source"))));
    faults.refuse();
    return new GelPoints(rows);
  }
}
