package jarwright.pantry;

import jarwright.lot.LotCode;
import jarwright.problem.Place;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.TreeMap;

/** A report of a load, for tests; what a test does not name is not told. */
public final class Told {
  static final Place HERE = new Place("day.csv", 2, 0, "");

  private final LotCode lot;
  private final int load;
  private Optional<JarNumbers> jars = Optional.empty();
  private Optional<Observed> seen = Optional.empty();
  private Optional<Look> look = Optional.empty();
  private Departures otherwise = Departures.NONE;
  private Optional<PutAway> away = Optional.empty();
  private JarNumbers unfilled = JarNumbers.NONE;
  private final TreeMap<Integer, String> notes = new TreeMap<>();
  private String note = "";

  private Told(LotCode lot, int load) {
    this.lot = lot;
    this.load = load;
  }

  public static Told of(LotCode lot, int load) {
    return new Told(lot, load);
  }

  Told jars(String numbers) {
    jars = Optional.of(JarNumbers.parse(numbers));
    return this;
  }

  public Told ran(Observed how) {
    seen = Optional.of(how);
    return this;
  }

  /** All jars but the named ones sealed, and lost no liquid. */
  public Told look(String unsealed, String someLost, String halfLost) {
    return look(unsealed, someLost, halfLost, "", Ticked.BLANK);
  }

  public Told look(String unsealed, String someLost, String halfLost, String signs, Ticked cloudy) {
    look =
        Optional.of(
            new Look(
                JarNumbers.parse(unsealed),
                JarNumbers.parse(someLost),
                JarNumbers.parse(halfLost),
                Departures.parse(signs),
                cloudy));
    return this;
  }

  Told otherwise(String words) {
    otherwise = Departures.parse(words);
    return this;
  }

  Told away(String refrigerator, String freezer, OffsetDateTime since) {
    away =
        Optional.of(new PutAway(JarNumbers.parse(refrigerator), JarNumbers.parse(freezer), since));
    return this;
  }

  Told unfilled(String numbers) {
    unfilled = JarNumbers.parse(numbers);
    return this;
  }

  Told note(int jar, String text) {
    notes.put(jar, text);
    return this;
  }

  Told note(String text) {
    note = text;
    return this;
  }

  public LoadReport report() {
    return new LoadReport(
        HERE, lot, load, jars, seen, look, otherwise, away, unfilled, notes, note);
  }
}
