package jarwright.ask;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** How one product answers to what was asked. */
final class Match {
  private final FoodNames product;
  private final List<FoodNames.Name> said;
  private final Set<String> words;
  private final int called;
  private final int place;
  private final int shared;
  private final int first;

  Match(FoodNames product, Phrasebook.Sorted asked) {
    this.product = product;
    this.said = product.said(asked);
    this.words = new HashSet<>(product.base());
    said.forEach(n -> words.addAll(n.stems()));
    List<FoodNames.Name> whole =
        said.stream()
            .filter(n -> asked.food().stream().allMatch(w -> has(n.stems(), w)))
            .sorted(
                Comparator.comparingInt((FoodNames.Name n) -> -n.weight(asked))
                    .thenComparingInt(FoodNames.Name::place))
            .toList();
    this.called = whole.isEmpty() ? 0 : whole.get(0).weight(asked);
    this.place = whole.isEmpty() ? FoodNames.FAR : whole.get(0).place();
    boolean stands = !said.isEmpty() || asked.food().stream().anyMatch(product::isHead);
    this.shared = stands ? (int) asked.food().stream().filter(w -> has(words, w)).count() : 0;
    this.first = product.first(asked.food());
  }

  private static boolean has(Collection<String> stems, Word word) {
    return !Collections.disjoint(stems, word.stems());
  }

  FoodNames product() {
    return product;
  }

  /** The weight of the best of its names that is said whole and leaves nothing over; or 0. */
  int called() {
    return called;
  }

  /** How many words of the food its names have, one of which must stand for it; else 0. */
  int shared() {
    return shared;
  }

  /** Whether its names have each of the stems. */
  boolean hasAll(Set<String> stems) {
    return words.containsAll(stems);
  }

  /** Whether a name of its own is said whole that has these words and more, as "apple butter". */
  boolean isNamedWith(Set<String> stems) {
    return said.stream()
        .map(n -> Set.copyOf(n.stems()))
        .anyMatch(n -> n.size() > stems.size() && n.containsAll(stems));
  }

  /**
   * The likeliest first: what goes by just these words, in the order that the name gives; then the
   * plainest.
   *
   * @param longest the weight of the longest name that any goes by
   */
  static Comparator<Match> likeliest(int longest) {
    return Comparator.comparing((Match m) -> longest == 0 || m.called < longest)
        .thenComparingInt(m -> m.place)
        .thenComparing(m -> m.said.isEmpty())
        .thenComparingInt(m -> m.first)
        .thenComparing(m -> !m.product.isPlain())
        .thenComparingInt(m -> m.product.length())
        .thenComparing(m -> m.product.product().id());
  }
}
