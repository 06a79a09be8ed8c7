package jarwright.shelf;

import jarwright.lot.LotCode;
import jarwright.pantry.JarWord;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Origin;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The jars of one lot at one place of which the same is to be said.
 *
 * @param stands the shelf from which they are to be taken away; empty for others
 * @param useBy the day by which they are to be used; empty where nobody knows, or none matters
 * @param moment by which they are to be canned again, or from which their seals may be tested;
 *     empty for others
 * @param numbers of the jars, rising
 */
record ShelfLine(
    ShelfPlace place,
    LotCode lot,
    LotFacts facts,
    Origin origin,
    String stands,
    Optional<LocalDate> useBy,
    Optional<OffsetDateTime> moment,
    List<Integer> numbers,
    JarWord word) {
  /** First to use first; unknown dates before all, since they may be oldest. */
  static final Comparator<ShelfLine> FIRST_TO_USE =
      Comparator.comparing((ShelfLine l) -> l.useBy().orElse(LocalDate.MIN))
          .thenComparing(l -> l.word() != JarWord.USE_FIRST)
          .thenComparing(ShelfLine::lot);

  ShelfLine {
    numbers = List.copyOf(numbers);
  }

  /** Whether its jars are fit to use, or will be once they are filled. */
  boolean counts() {
    return !place.calls() && (word.mayBeEaten() || word == JarWord.PLANNED);
  }
}
