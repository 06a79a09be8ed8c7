package jarwright.files;

import jarwright.problem.Place;
import jarwright.problem.Problems;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** One of the program's own tables: exactly the columns expected, one row a line, no line lost. */
final class TableText {
  private static final CSVFormat FORM =
      CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get();

  private final String file;
  private final List<String> columns;
  private final List<Row> rows = new ArrayList<>();
  private final Problems faults;

  /** Cuts the whole text up; rows that do not have the columns are told as faults and left out. */
  TableText(String file, String text, List<String> columns, Problems faults) {
    this(file, text, columns, faults, first -> true);
  }

  /**
   * Cuts up only some lines of the text: most of the time of reading goes into cutting.
   *
   * @param wanted whether a row is needed, by its first cell
   */
  TableText(
      String file, String text, List<String> columns, Problems faults, Predicate<String> wanted) {
    this.file = file;
    this.columns = columns;
    this.faults = faults;
    List<Integer> numbers = new ArrayList<>();
    StringBuilder kept = new StringBuilder();
    int number = 0;
    int comma = -1;
    for (int from = 0, to; from < text.length(); from = to + 1) {
      to = text.indexOf('\n', from);
      to = to < 0 ? text.length() : to;
      number++;
      if (comma < from) {
        comma = text.indexOf(',', from);
        comma = comma < 0 ? text.length() : comma;
      }
      if (number == 1 || wanted.test(text.substring(from, Math.min(comma, to)))) {
        numbers.add(number);
        kept.append(text, from, to).append('\n');
      }
    }
    cut(kept.toString(), numbers);
  }

  private void cut(String text, List<Integer> numbers) {
    int rowsCut = 0;
    try (CSVParser parser = CSVParser.parse(new StringReader(text), FORM)) {
      for (CSVRecord written : parser) {
        if (rowsCut < numbers.size()) {
          add(new Row(numbers.get(rowsCut), written.toList()));
        }
        rowsCut++;
      }
    } catch (IOException | UncheckedIOException e) {
      fault(0, "it cannot be cut into rows: " + e.getMessage(), "comma-separated values");
    }
    if (rowsCut == 0 || rowsCut != numbers.size()) {
      fault(0, numbers.size() + " lines make " + rowsCut + " rows", "a header, one line a row");
    }
  }

  private void add(Row row) {
    if (row.line() == 1) {
      if (!row.cells().equals(columns)) {
        fault(1, "the columns are " + row.cells(), columns.toString());
      }
    } else if (row.cells().size() != columns.size()) {
      fault(row.line(), row.cells().size() + " cells: " + row.text(), columns.size() + " cells");
    } else {
      rows.add(row);
    }
  }

  List<Row> rows() {
    return rows;
  }

  String file() {
    return file;
  }

  /** What each row holds; a row whose reading throws is told as a fault and left out. */
  <T> List<T> read(Function<Row, T> reader) {
    List<T> read = new ArrayList<>();
    for (Row row : rows) {
      if (faults.isFull()) {
        break;
      }
      try {
        read.add(reader.apply(row));
      } catch (IllegalArgumentException e) {
        fault(row, e.getMessage(), "");
      }
    }
    return read;
  }

  /**
   * Tells a fault of a row.
   *
   * @param expected what would be right; empty where the fault's words say so
   */
  void fault(Row row, String what, String expected) {
    fault(row.line(), what + ": " + row.text(), expected);
  }

  private void fault(int line, String what, String expected) {
    faults.add(
        new Place(file, line, 0, ""),
        "the program's own table is faulty: " + what,
        expected.isEmpty() ? "" : "expected: " + expected);
  }

  /** A row as it stands; cells are named by their column. */
  final class Row {
    private final int line;
    private final List<String> cells;

    private Row(int line, List<String> cells) {
      this.line = line;
      this.cells = cells;
    }

    int line() {
      return line;
    }

    String text() {
      return String.join(",", cells);
    }

    private List<String> cells() {
      return cells;
    }

    String get(String column) {
      return cells.get(columns.indexOf(column));
    }

    /**
     * The cell as the word of a fixed family.
     *
     * @throws IllegalArgumentException when the family does not have it
     */
    <T> T word(String column, Function<String, Optional<T>> named, List<String> known) {
      return named
          .apply(get(column))
          .orElseThrow(
              () ->
                  new IllegalArgumentException(
                      column + " \"" + get(column) + "\" is none of " + known));
    }

    /**
     * The cell as a whole number, which is never written with a sign or a leading zero.
     *
     * @throws IllegalArgumentException when it is none
     */
    int number(String column) {
      String cell = get(column);
      if (!cell.matches("0|[1-9]\\d{0,5}")) {
        throw new IllegalArgumentException(column + " \"" + cell + "\" is no whole number");
      }
      return Integer.parseInt(cell);
    }
  }
}
