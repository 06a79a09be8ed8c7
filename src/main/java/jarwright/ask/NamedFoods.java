package jarwright.ask;

import jarwright.process.Product;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What food a household's own name for it can only mean. Where the search shows what is likely,
 * this knows for sure or knows nothing.
 */
public final class NamedFoods {
  /** Kinds of food that are canned as they are, so that a name says all of them. */
  private static final Set<String> PLAIN =
      Set.of("tomato", "vegetables", "poultry", "red-meats", "seafoods");

  /** Words of kinds that depend on a formula; a name has to say one of its kind. */
  private static final Set<String> MADE =
      Set.of(
          "pickle", "relish", "salsa", "chutney", "ketchup", "jam", "jelly", "spread", "filling",
          "sauce");

  private static final Set<String> FERMENTED = Set.of("pickle", "sauerkraut");
  private static final Set<String> SPREADS = Set.of("jam", "jelly", "preserves", "marmalade");
  private static final String FRUIT = "fruit";
  private static final String ENGLISH = "en";

  private final FoodSearch search;

  public NamedFoods(FoodSearch search) {
    this.search = search;
  }

  /**
   * Every product that the name can mean; none where a word is not understood or is only taken for
   * another. What is acid by its formula alone is meant only where the name says so: onions are no
   * pickled onions. The jam or jelly of a fruit is as acid as the fruit, and found as that.
   */
  public List<Product> meant(String name) {
    List<String> said = Spelling.words(name);
    Meaning meaning = search.hear(name).food();
    if (meaning instanceof Meaning.Known known && known.readAs().isEmpty()) {
      return known
          .one()
          .filter(p -> saysWhatItIs(p, said))
          .map(List::of)
          .orElseGet(() -> known.products().stream().filter(p -> saysWhatItIs(p, said)).toList());
    }
    if (meaning instanceof Meaning.Unknown && said.stream().anyMatch(w -> isOneOf(w, SPREADS))) {
      String fruit =
          said.stream().filter(w -> !isOneOf(w, SPREADS)).collect(Collectors.joining(" "));
      return search.hear(fruit).food() instanceof Meaning.Known known && known.readAs().isEmpty()
          ? known.products().stream().filter(p -> p.category().equals(FRUIT)).toList()
          : List.of();
    }
    return List.of();
  }

  private static boolean saysWhatItIs(Product product, List<String> said) {
    List<String> words = List.of(product.category().split("-"));
    if (PLAIN.contains(product.category()) || words.contains(FRUIT)) {
      return true;
    }
    Set<String> kinds = words.stream().filter(MADE::contains).collect(Collectors.toSet());
    Set<String> asked = kinds.isEmpty() ? FERMENTED : kinds;
    return said.stream().anyMatch(w -> isOneOf(w, asked));
  }

  private static boolean isOneOf(String word, Set<String> kinds) {
    String stem = Spelling.stem(ENGLISH, word);
    return kinds.stream().anyMatch(k -> Spelling.stem(ENGLISH, k).equals(stem));
  }
}
