package jarwright.shelf;

import jarwright.lot.LotCode;
import jarwright.pantry.LotFacts;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The jars of one lot at one place.
 *
 * @param place its name as the sheet shows it
 * @param useBy the day by which they are to be used; empty where nobody knows
 * @param numbers of the jars, rising
 * @param useFirst to be eaten before others of their kind
 * @param planned not yet out of the canner
 * @param doubtful to be looked at before they are eaten
 */
record ShelfLine(
    String place,
    LotCode lot,
    LotFacts facts,
    Optional<LocalDate> useBy,
    List<Integer> numbers,
    boolean useFirst,
    boolean planned,
    boolean doubtful) {
  /** First to use first; unknown dates before all, since they may be oldest. */
  static final Comparator<ShelfLine> FIRST_TO_USE =
      Comparator.comparing((ShelfLine l) -> l.useBy().orElse(LocalDate.MIN))
          .thenComparing(l -> !l.useFirst())
          .thenComparing(ShelfLine::lot);

  ShelfLine {
    numbers = List.copyOf(numbers);
  }
}
