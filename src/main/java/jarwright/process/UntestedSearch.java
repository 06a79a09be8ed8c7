package jarwright.process;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds the food or way without a tested process that somebody's words name. */
public final class UntestedSearch {
  private final List<Untested> known;
  private final List<Product> products;

  public UntestedSearch(List<Untested> known, List<Product> products) {
    this.known = List.copyOf(known);
    this.products = List.copyOf(products);
  }

  /** What the words are a name of. */
  public Optional<Untested> called(String asked) {
    return known.stream().filter(u -> u.isCalled(asked)).findFirst();
  }

  /**
   * What the words are a name of; else what they name among others, as {@code oven canned plums},
   * the longest name first. A product whose name has all of the words goes before that.
   */
  public Optional<Untested> find(String asked) {
    Optional<Untested> called = called(asked);
    Set<String> words = ProductSearch.words(asked).collect(Collectors.toSet());
    if (called.isPresent() || isNamed(words)) {
      return called;
    }
    return known.stream()
        .filter(u -> longest(u, words) > 0)
        .max(Comparator.comparingInt(u -> longest(u, words)));
  }

  /** Whether the words are the very name of a product too, which the tables then go before. */
  public boolean isProduct(String asked) {
    String id = String.join("-", asked.strip().toLowerCase(Locale.ROOT).split("[\\s_-]+"));
    return products.stream().anyMatch(p -> p.id().equals(id));
  }

  /** Whether the name of one product has all of the words. */
  private boolean isNamed(Set<String> words) {
    return products.stream()
        .anyMatch(
            p -> ProductSearch.names(p).collect(Collectors.toSet()).containsAll(words));
  }

  /** Words in the longest of its names that the asked words hold whole; 0 where they hold none. */
  private static int longest(Untested untested, Set<String> asked) {
    return untested.words().stream()
        .map(name -> ProductSearch.words(name).collect(Collectors.toSet()))
        .filter(name -> !name.isEmpty() && asked.containsAll(name))
        .mapToInt(Set::size)
        .max()
        .orElse(0);
  }
}
