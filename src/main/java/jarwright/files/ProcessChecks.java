package jarwright.files;

import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.TableRow;
import jarwright.process.TestedProcess;
import jarwright.quantity.GaugePressure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the rows of process-times.csv must be to each other: no gap, no overlap, none twice. */
final class ProcessChecks {
  private static final Pattern OPTION = Pattern.compile("option ([1-9]) of ([2-9])");
  private static final String STERILE = "sterile-jars";

  /** Dial-gauge tables of the guide end here. */
  private static final int DIAL_TOP_FEET = 8_000;

  /** A row with the line it comes from. */
  record Read(TableText.Row line, TableRow row) {}

  private record Key(String product, Method method, Pack pack, JarSize jar) {
    /** By hand: what the compiler makes for a record costs a short run tens of milliseconds. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Key that
          && product.equals(that.product)
          && method == that.method
          && pack == that.pack
          && jar == that.jar;
    }

    @Override
    public int hashCode() {
      return ((product.hashCode() * 31 + method.hashCode()) * 31 + pack.hashCode()) * 31
          + jar.hashCode();
    }

    static Key of(TableRow row) {
      return new Key(row.productId(), row.method(), row.pack(), row.jar());
    }
  }

  private final TableText table;

  ProcessChecks(TableText table) {
    this.table = table;
  }

  void check(List<Read> rows) {
    rows.forEach(this::checkSterile);
    Map<Key, List<Read>> settings = new LinkedHashMap<>();
    rows.forEach(r -> settings.computeIfAbsent(Key.of(r.row()), k -> new ArrayList<>()).add(r));
    settings.forEach(
        (key, own) -> {
          checkPack(key, own.get(0), settings);
          checkOptions(runs(own));
        });
  }

  private void checkSterile(Read read) {
    boolean needed = read.row().process().filter(TestedProcess::needsSterileJars).isPresent();
    boolean noted = List.of(read.row().note().split("; ")).contains(STERILE);
    if (needed != noted) {
      table.fault(
          read.line(),
          needed ? "boiling water under 10 min without its note" : "a note without its reason",
          "note " + STERILE + " where boiling water is under 10 min, and nowhere else");
    }
  }

  private void checkPack(Key key, Read first, Map<Key, List<Read>> settings) {
    if (key.pack() != Pack.RAW_OR_HOT) {
      return;
    }
    for (Pack single : List.of(Pack.RAW, Pack.HOT)) {
      if (settings.containsKey(new Key(key.product(), key.method(), single, key.jar()))) {
        table.fault(
            first.line(), "one row for both packs beside a row for " + single, "one or the other");
      }
    }
  }

  /** The bands of a setting in file order, a new run wherever one starts at 0. */
  private static List<List<Read>> runs(List<Read> rows) {
    List<List<Read>> runs = new ArrayList<>();
    for (Read read : rows) {
      if (runs.isEmpty() || read.row().band().fromFeet() == 0) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(read);
    }
    return runs;
  }

  private void checkOptions(List<List<Read>> runs) {
    for (int i = 0; i < runs.size(); i++) {
      checkBands(runs.get(i));
      checkRise(runs.get(i));
      String expected = runs.size() == 1 ? "" : "option " + (i + 1) + " of " + runs.size();
      for (Read read : runs.get(i)) {
        if (read.row().process().isPresent() && !option(read.row()).equals(expected)) {
          table.fault(
              read.line(),
              "its setting has " + runs.size() + " runs of bands, the row is number " + (i + 1),
              expected.isEmpty()
                  ? "no option in the note, every band once"
                  : "note \"" + expected + "\", every band once in each option");
        }
      }
    }
  }

  private static String option(TableRow row) {
    Matcher option = OPTION.matcher(row.note());
    return option.find() ? option.group() : "";
  }

  private void checkBands(List<Read> run) {
    Read first = run.get(0);
    if (first.row().band().fromFeet() != 0) {
      table.fault(first.line(), "the lowest band starts above 0 ft", "alt_min_ft 0");
    }
    for (int i = 1; i < run.size(); i++) {
      if (!run.get(i - 1).row().band().isFollowedBy(run.get(i).row().band())) {
        table.fault(
            run.get(i).line(),
            "the band leaves a gap to the one before, or overlaps it",
            "alt_min_ft one more than the alt_max_ft before it");
      }
    }
    Read last = run.get(run.size() - 1);
    int top = last.row().band().toFeet().orElse(0);
    boolean dial = last.row().method() == Method.DIAL_GAUGE;
    if (top != (dial ? DIAL_TOP_FEET : 0)) {
      table.fault(
          last.line(),
          "the highest band ends where its table does not",
          dial ? "alt_max_ft " + DIAL_TOP_FEET : "an open end");
    }
  }

  private void checkRise(List<Read> run) {
    Optional<TestedProcess> before = Optional.empty();
    for (Read read : run) {
      Optional<TestedProcess> here = read.row().process();
      if (here.isPresent() && before.isPresent() && falls(before.get(), here.get())) {
        table.fault(
            read.line(),
            "it asks for less than the band below it",
            "minutes in boiling water, and minutes and psi under pressure, that never fall");
      }
      before = here.isPresent() ? here : before;
    }
  }

  private static boolean falls(TestedProcess below, TestedProcess here) {
    GaugePressure none = GaugePressure.psi(0);
    return here.minutes() < below.minutes()
        || here.pressure().orElse(none).compareTo(below.pressure().orElse(none)) < 0;
  }
}
