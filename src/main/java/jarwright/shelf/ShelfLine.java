package jarwright.shelf;

import jarwright.lot.LotCode;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Urgency;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The jars of one lot at one place that are equally urgent.
 *
 * @param useBy the day by which they are to be used; empty where nobody knows, or none matters
 * @param moment by which they are to be canned again, or from which their seals may be tested;
 *     empty for others
 * @param numbers of the jars, rising
 * @param urgency empty where they are planned and not yet out of the canner
 */
record ShelfLine(
    ShelfPlace place,
    LotCode lot,
    LotFacts facts,
    Optional<LocalDate> useBy,
    Optional<OffsetDateTime> moment,
    List<Integer> numbers,
    Optional<Urgency> urgency) {
  /** First to use first; unknown dates before all, since they may be oldest. */
  static final Comparator<ShelfLine> FIRST_TO_USE =
      Comparator.comparing((ShelfLine l) -> l.useBy().orElse(LocalDate.MIN))
          .thenComparing(l -> !l.has(Urgency.USE_FIRST))
          .thenComparing(ShelfLine::lot);

  ShelfLine {
    numbers = List.copyOf(numbers);
  }

  boolean has(Urgency wanted) {
    return urgency.equals(Optional.of(wanted));
  }
}
