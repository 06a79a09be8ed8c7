package jarwright.files;

import jarwright.problem.Nearest;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a table as spreadsheets save it into {@link Written}: a list of rows, each with the
 * header's keys and its own filled cells.
 */
final class CsvTree {
  private static final List<Character> SEPARATORS = List.of(',', ';', '\t');

  private static final int KEYS_SHOWN = 5;

  private static final int MOST_ROWS = 50_000;

  /** A first line by which some spreadsheets name the separator. */
  private static final Pattern HINT = Pattern.compile("sep=[,;\t]");

  private final TextFile file;
  private final List<String> known;
  private final Map<String, String> elsewhere;
  private final Problems problems;
  private final char separator;

  private CsvTree(
      TextFile file,
      List<String> known,
      Map<String, String> elsewhere,
      Problems problems,
      char separator) {
    this.file = file;
    this.known = known;
    this.elsewhere = elsewhere;
    this.problems = problems;
    this.separator = separator;
  }

  /**
   * Reads a file.
   *
   * @param known the keys a header may have
   * @param elsewhere remedies for keys that no row has
   * @param problems gets what is wrong with header and form of rows
   * @throws Refused where the file cannot be cut into cells at all, or into far too many
   */
  static Written.Items read(
      TextFile file, List<String> known, Map<String, String> elsewhere, Problems problems)
      throws Refused {
    return new CsvTree(file, known, elsewhere, problems, separator(file, known)).rows();
  }

  /** The separator that makes known keys of the most cells in the first line that is not blank. */
  private static char separator(TextFile file, List<String> known) {
    String header = firstLine(file);
    if (HINT.matcher(header).matches()) {
      return header.charAt(header.length() - 1);
    }
    char best = SEPARATORS.get(0);
    long most = -1;
    for (char candidate : SEPARATORS) {
      long cells = header.chars().filter(c -> c == candidate).count();
      long keys =
          List.of(header.split(String.valueOf(candidate), -1)).stream()
              .map(cell -> key(cell.replace("\"", "")))
              .filter(known::contains)
              .count();
      long weight = keys * file.text().length() + cells;
      if (weight > most) {
        most = weight;
        best = candidate;
      }
    }
    return best;
  }

  private static String firstLine(TextFile file) {
    return file.lines().stream().filter(l -> !l.isBlank()).findFirst().orElse("");
  }

  /** Header cells are read without regard to case, spaces and underscores. */
  private static String key(String cell) {
    return cell.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
  }

  private Written.Items rows() throws Refused {
    List<Written> rows = new ArrayList<>();
    CSVFormat form =
        CSVFormat.DEFAULT.builder().setDelimiter(separator).setIgnoreEmptyLines(true).get();
    int line = 1;
    boolean hint = HINT.matcher(firstLine(file)).matches();
    try (CSVParser parser = CSVParser.parse(new StringReader(file.text()), form)) {
      List<String> header = List.of();
      for (CSVRecord written : parser) {
        if (problems.isFull()) {
          break;
        }
        Cells cells = new Cells(written);
        line = Math.toIntExact(parser.getCurrentLineNumber()) + 1;
        if (hint || written.toList().stream().allMatch(String::isBlank)) {
          hint = false;
        } else if (header.isEmpty()) {
          header = header(cells);
        } else if (rows.size() == MOST_ROWS) {
          throw new Refused(
              cells.place(0),
              "the table has more than " + MOST_ROWS + " rows",
              "divide it into several files");
        } else {
          rows.add(row(header, cells));
        }
      }
    } catch (IOException | UncheckedIOException e) {
      throw new Refused(
          file.at(line, 1),
          "from here on the file cannot be cut into cells",
          "close every quoted cell; write a quote inside one twice");
    }
    return new Written.Items(file.at(1, 1), rows);
  }

  private List<String> header(Cells cells) throws Refused {
    List<String> header = new ArrayList<>();
    if (cells.written.stream().noneMatch(cell -> known.contains(key(cell)))) {
      throw new Refused(
          cells.place(0),
          "this line has none of the keys that are asked for",
          "begin the table with a line of keys, as "
              + String.join(", ", known.subList(0, Math.min(KEYS_SHOWN, known.size()))));
    }
    for (int i = 0; i < cells.size(); i++) {
      if (problems.isFull()) {
        break;
      }
      String key = key(cells.get(i));
      if (!key.isEmpty() && !known.contains(key)) {
        problems.add(
            cells.place(i),
            "there is no key \"" + cells.get(i).strip() + "\"",
            elsewhere.getOrDefault(key, Nearest.remedy(key, known)));
      } else if (!key.isEmpty() && header.contains(key)) {
        problems.add(cells.place(i), "the key " + key + " has two columns", "keep one of them");
      }
      header.add(key);
    }
    return header;
  }

  private Written row(List<String> header, Cells cells) {
    Map<String, Written.Entry> entries = new LinkedHashMap<>();
    for (int i = 0; i < cells.size(); i++) {
      String text = cells.get(i).strip();
      String key = i < header.size() ? header.get(i) : "";
      if (text.isEmpty()) {
        continue;
      }
      if (key.isEmpty()) {
        problems.add(cells.place(i), "this cell has no key above it", "give the column a header");
      } else if (known.contains(key)) {
        Place place = cells.place(i);
        Written value = new Written.Text(place, text, separator != ',');
        entries.putIfAbsent(key, new Written.Entry(place, value));
      }
    }
    return new Written.Keys(cells.place(0), entries);
  }

  /** The cells of one record, with their places in the file as it is. */
  private final class Cells {
    private final CSVRecord written;
    private final int[] starts;

    private Cells(CSVRecord written) {
      this.written = written;
      this.starts = new int[written.size()];
      String text = file.text();
      int at = Math.toIntExact(written.getCharacterPosition());
      while (at < text.length() && (text.charAt(at) == '\n' || text.charAt(at) == '\r')) {
        at++;
      }
      starts[0] = at;
      for (int cell = 1; cell < starts.length; cell++) {
        at = Math.min(end(text, at) + 1, text.length());
        starts[cell] = at;
      }
    }

    /** Where the cell ends that begins there. A quote quotes only where a cell begins with it. */
    private int end(String text, int start) {
      int at = start;
      if (at < text.length() && text.charAt(at) == '"') {
        do {
          int quote = text.indexOf('"', at + 1);
          at = quote < 0 ? text.length() : quote + 1;
        } while (at < text.length() && text.charAt(at) == '"');
      }
      while (at < text.length() && text.charAt(at) != separator && text.charAt(at) != '\n') {
        at++;
      }
      return at;
    }

    private int size() {
      return written.size();
    }

    private String get(int i) {
      return written.get(i);
    }

    private Place place(int i) {
      return file.atIndex(starts[i]);
    }
  }
}
