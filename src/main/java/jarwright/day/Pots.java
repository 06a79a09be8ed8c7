package jarwright.day;

import jarwright.quantity.Fraction;
import jarwright.quantity.Volume;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The kitchen's cooking pots that find a burner, the largest first.
 *
 * @param sizes from brim to bottom
 */
record Pots(List<Volume> sizes) {
  /** Common practice, no source: what boils in a fuller pot runs over. */
  private static final Fraction FULL = Fraction.of(3, 4);

  Pots {
    if (sizes.isEmpty()) {
      throw new IllegalArgumentException("food is cooked in a pot");
    }
    sizes = List.copyOf(sizes);
  }

  /**
   * The largest pots.
   *
   * @param burners left for pots of food, 1 or more; the smallest pot serves on any further one
   */
  static Pots on(int burners, List<Volume> owned) {
    List<Volume> sizes = new ArrayList<>(owned);
    sizes.sort(Comparator.<Volume>naturalOrder().reversed());
    return new Pots(sizes.subList(0, Math.min(burners, sizes.size())));
  }

  /** In how many goes so much food is cooked, all pots used. */
  int goes(Fraction quarts) {
    Fraction all = quarts(sizes);
    return quarts.dividedBy(all).ceiling().intValueExact();
  }

  /** The fewest pots that hold so much food, the largest first; all of them where none do. */
  List<Volume> holding(Fraction quarts) {
    for (int count = 1; count < sizes.size(); count++) {
      if (quarts(sizes.subList(0, count)).compareTo(quarts) >= 0) {
        return sizes.subList(0, count);
      }
    }
    return sizes;
  }

  private static Fraction quarts(List<Volume> pots) {
    return pots.stream()
        .map(p -> p.in(Volume.Unit.QUART).times(FULL))
        .reduce(Fraction.ZERO, Fraction::plus);
  }
}
