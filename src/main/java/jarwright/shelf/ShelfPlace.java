package jarwright.shelf;

import jarwright.page.Wording;
import jarwright.pantry.Standing;
import java.util.Comparator;

/**
 * A heading of the inventory: a shelf by its name, or a place that calls for something.
 *
 * @param rank places that call for something stand first
 */
record ShelfPlace(int rank, String name) implements Comparable<ShelfPlace> {
  private static final int CALLS = 0;
  private static final int COLD = 1;
  private static final int SHELF = 2;
  private static final int NOWHERE = 3;
  private static final Comparator<ShelfPlace> ORDER =
      Comparator.comparingInt(ShelfPlace::rank).thenComparing(ShelfPlace::name);

  /** Where a jar of the given standing is looked for. */
  static ShelfPlace of(Standing standing, String plannedFor, Wording words) {
    return switch (standing.kind()) {
      case TO_RECAN, TO_THROW_AWAY, COOLING ->
          new ShelfPlace(CALLS, words.text("shelf.place." + standing.kind().word()));
      case IN_REFRIGERATOR, IN_FREEZER ->
          new ShelfPlace(COLD, words.text("shelf.place." + standing.kind().word()));
      case ON_SHELF -> shelf(((Standing.OnShelf) standing).shelf(), words);
      default -> shelf(plannedFor, words);
    };
  }

  private static ShelfPlace shelf(String name, Wording words) {
    return name.isBlank()
        ? new ShelfPlace(NOWHERE, words.text("shelf.place.none"))
        : new ShelfPlace(SHELF, name);
  }

  /** Whether jars here are to be seen to before anything else. */
  boolean calls() {
    return rank == CALLS;
  }

  @Override
  public int compareTo(ShelfPlace other) {
    return ORDER.compare(this, other);
  }
}
