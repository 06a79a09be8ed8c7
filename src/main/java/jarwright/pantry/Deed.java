package jarwright.pantry;

import jarwright.pantry.Standing.Kind;
import java.util.Locale;
import java.util.Set;

/** What can be done with a jar, and with a jar in which standing. */
public enum Deed {
  UNFILLED("", Kind.PLANNED, Kind.COOLING),
  MOVED("to", Kind.ON_SHELF),
  TAKEN("note", Kind.ON_SHELF, Kind.IN_REFRIGERATOR, Kind.IN_FREEZER, Kind.TO_RECAN, Kind.MISSING),
  TOSSED(
      "why",
      Kind.PLANNED,
      Kind.COOLING,
      Kind.ON_SHELF,
      Kind.IN_REFRIGERATOR,
      Kind.IN_FREEZER,
      Kind.TO_RECAN,
      Kind.TO_THROW_AWAY,
      Kind.MISSING),
  REFRIGERATED("eat-by", Kind.ON_SHELF, Kind.TO_RECAN),
  FROZEN("", Kind.IN_REFRIGERATOR, Kind.TO_RECAN),
  RECANNED("into", Kind.TO_RECAN),
  MISSING(
      "",
      Kind.COOLING,
      Kind.ON_SHELF,
      Kind.IN_REFRIGERATOR,
      Kind.IN_FREEZER,
      Kind.TO_RECAN,
      Kind.TO_THROW_AWAY),
  FOUND("shelf", Kind.MISSING, Kind.TAKEN, Kind.TOSSED),
  /** Of ledgers that knew no {@link Checked}: looked at, told in a sentence. */
  LOOKED_AT("note", Kind.values());

  private final String key;
  private final Set<Kind> from;

  Deed(String key, Kind... from) {
    this.key = key;
    this.from = Set.of(from);
  }

  /** The word in the ledger's event column. */
  String kind() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The name of its one particular; empty where it has none. */
  String key() {
    return key;
  }

  boolean isPossibleFor(Kind standing) {
    return from.contains(standing);
  }
}
