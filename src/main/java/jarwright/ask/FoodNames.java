package jarwright.ask;

import jarwright.process.Product;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** All that one product is called, ready to be compared. */
final class FoodNames {
  /** Kinds of food canned as it is; salsas, pickles and spreads made of it stand behind. */
  private static final Set<String> PLAIN =
      Set.of("fruit", "tomato", "vegetables", "poultry", "red-meats", "seafoods");

  private static final String ENGLISH = "en";
  private static final int FAR = 1_000;

  private final Product product;
  private final Lexicon lexicon;

  /** Its own names by language, word after word; the first is the plainest. */
  private final Map<String, Set<String>> own = new LinkedHashMap<>();

  /** Words that may stand for it: those of its own names outside of brackets. */
  private final Set<String> heads = new HashSet<>();

  private final Set<String> base = new HashSet<>();

  /** Each name by itself. */
  private final List<Set<String>> names = new ArrayList<>();

  FoodNames(Product product, Lexicon lexicon) {
    this.product = product;
    this.lexicon = lexicon;
    names.add(lexicon.stems(ENGLISH, product.id()));
    takeOwn(ENGLISH, product.id());
    takeOwn(ENGLISH, product.name());
  }

  void add(Saying saying) {
    if (saying.sense() == Saying.Sense.NAME) {
      takeOwn(saying.language(), saying.words());
    } else {
      names.add(lexicon.stems(saying.language(), saying.words()));
    }
  }

  private void takeOwn(String language, String name) {
    String plain = name.replaceAll("\\([^)]*+\\)", " ");
    Set<String> all = lexicon.stems(language, name);
    own.computeIfAbsent(language, l -> new LinkedHashSet<>()).addAll(all);
    base.addAll(all);
    heads.addAll(lexicon.stems(language, plain));
    names.add(all);
    names.add(lexicon.stems(language, plain));
  }

  Product product() {
    return product;
  }

  /** Every word of every name. */
  Set<String> words() {
    Set<String> words = new HashSet<>(base);
    names.forEach(words::addAll);
    return words;
  }

  /** Whether one of its names is said whole, with nothing left over of the food. */
  boolean isCalled(List<Word> food, Set<String> said) {
    return names.stream()
        .anyMatch(n -> said.containsAll(n) && food.stream().allMatch(w -> has(n, w)));
  }

  /** Words in the longest of its names that is said whole; 0 where none is. */
  int longest(Set<String> said) {
    return names.stream().filter(said::containsAll).mapToInt(Set::size).max().orElse(0);
  }

  /** Whether its names have each word of the food, and one of them stands for it. */
  boolean covers(List<Word> food, Set<String> said) {
    Set<String> own = of(said);
    return food.stream().allMatch(w -> has(own, w))
        && (longest(said) > 0 || food.stream().anyMatch(w -> has(heads, w)));
  }

  /** Whether its names have each of the stems. */
  boolean hasAll(Set<String> stems, Set<String> said) {
    return of(said).containsAll(stems);
  }

  /** Words of the food that its names have, one of which must stand for it; else 0. */
  int shared(List<Word> food, Set<String> said) {
    Set<String> own = of(said);
    boolean stands = longest(said) > 0 || food.stream().anyMatch(w -> has(heads, w));
    return stands ? (int) food.stream().filter(w -> has(own, w)).count() : 0;
  }

  /** Its own words, and those of the household's names that are said whole. */
  private Set<String> of(Set<String> said) {
    Set<String> words = new HashSet<>(base);
    names.stream().filter(said::containsAll).forEach(words::addAll);
    return words;
  }

  private static boolean has(Set<String> stems, Word word) {
    return !Collections.disjoint(stems, word.stems());
  }

  /** How early in a name of its own the first word of the food stands. */
  int first(List<Word> food) {
    int first = FAR;
    for (Set<String> stems : own.values()) {
      int at = 0;
      for (String stem : stems) {
        if (food.stream().anyMatch(w -> w.stems().contains(stem))) {
          first = Math.min(first, at);
        }
        at++;
      }
    }
    return first;
  }

  boolean isPlain() {
    return PLAIN.contains(product.category());
  }

  int length() {
    return own.get(ENGLISH).size();
  }
}
