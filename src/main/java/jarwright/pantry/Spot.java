package jarwright.pantry;

import java.util.Comparator;
import java.util.Locale;

/**
 * Where a jar that is in the house is looked for, as lists and stock-takes name it.
 *
 * @param kind what keeps it there
 * @param name of the shelf, empty where it has none; else {@code refrigerator} and the like
 */
public record Spot(Standing.Kind kind, String name) implements Comparable<Spot> {
  private static final Comparator<Spot> ORDER =
      Comparator.comparing((Spot s) -> s.isShelf() ? 1 : 0)
          .thenComparing(s -> s.isShelf() && s.name.isEmpty() ? 1 : 0)
          .thenComparing(s -> s.isShelf() ? 0 : s.kind.compareTo(Standing.Kind.ON_SHELF))
          .thenComparing(s -> alike(s.name))
          .thenComparing(Spot::name);

  /**
   * The place that goes with a standing.
   *
   * @throws IllegalArgumentException where a jar of that standing is not in the house
   */
  public static Spot of(Standing standing) {
    return switch (standing.kind()) {
      case ON_SHELF -> new Spot(standing.kind(), ((Standing.OnShelf) standing).shelf());
      case COOLING -> new Spot(standing.kind(), "cooling");
      case IN_REFRIGERATOR -> new Spot(standing.kind(), "refrigerator");
      case IN_FREEZER -> new Spot(standing.kind(), "freezer");
      case TO_RECAN -> new Spot(standing.kind(), "to can again");
      case TO_THROW_AWAY -> new Spot(standing.kind(), "to throw away");
      default -> throw new IllegalArgumentException("what is " + standing.kind() + " has no place");
    };
  }

  public boolean isShelf() {
    return kind == Standing.Kind.ON_SHELF;
  }

  /** Whether somebody means this place by that name; case and gaps are forgiven. */
  public boolean isCalled(String typed) {
    return alike(name).equals(alike(typed));
  }

  /** Names that differ in case and gaps alone are one place. */
  static String alike(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }

  /** Jars that may not stand on a shelf come first, then shelves by name. */
  @Override
  public int compareTo(Spot other) {
    return ORDER.compare(this, other);
  }
}
