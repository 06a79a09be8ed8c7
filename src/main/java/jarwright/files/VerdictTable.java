package jarwright.files;

import jarwright.pantry.Finding;
import jarwright.pantry.Grade;
import jarwright.pantry.VerdictRule;
import jarwright.pantry.VerdictRules;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalInt;

/** Reads the program's own rules for verdicts, whole and checked, or not at all. */
public final class VerdictTable {
  static final String FILE = "verdict-rules.csv";
  static final List<String> COLUMNS =
      List.of("rule", "finding", "verdict", "hours", "days", "basis", "source");
  private static final List<String> BASES = List.of("published", "practice", "memory");

  private VerdictTable() {}

  /**
   * The rules that are part of the program.
   *
   * @throws Refused with every fault found in them, worded as the program's own
   * @throws IOException where the program's own file is damaged
   */
  public static VerdictRules read() throws IOException, Refused {
    try (InputStream in = VerdictTable.class.getResourceAsStream("/jarwright/pantry/" + FILE)) {
      if (in == null) {
        throw new IOException("the program's own table " + FILE + " is missing from it");
      }
      return read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  static VerdictRules read(String text) throws Refused {
    Problems faults = new Problems();
    List<VerdictRule> rules = new TableText(FILE, text, COLUMNS, faults).read(VerdictTable::rule);
    faults.refuse();
    try {
      return new VerdictRules(rules);
    } catch (IllegalArgumentException e) {
      throw new Refused(
          Place.wholeFile(FILE), "the program's own table is faulty: " + e.getMessage(), "");
    }
  }

  private static VerdictRule rule(TableText.Row row) {
    String basis = row.get("basis");
    if (!BASES.contains(basis)) {
      throw new IllegalArgumentException("basis \"" + basis + "\" is none of " + BASES);
    }
    return new VerdictRule(
        row.get("rule"),
        Finding.parse(row.get("finding")),
        Grade.parse(row.get("verdict")),
        limit(row, "hours"),
        limit(row, "days"),
        basis.equals("published"),
        row.get("source"));
  }

  private static OptionalInt limit(TableText.Row row, String column) {
    return row.get(column).isEmpty() ? OptionalInt.empty() : OptionalInt.of(row.number(column));
  }
}
