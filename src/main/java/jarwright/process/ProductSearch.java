package jarwright.process;

import jarwright.problem.Nearest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Finds products by the words that a cook uses for them. */
public final class ProductSearch {
  private static final int SHORTEST_STEM = 4;

  /** Kinds of food canned as it is; salsas, pickles and spreads made of it stand behind. */
  private static final Set<String> PLAIN =
      Set.of("fruit", "tomato", "vegetables", "poultry", "red-meats", "seafoods");

  private static final Set<String> EMPTY_WORDS =
      Set.of("and", "or", "in", "no", "of", "the", "with", "for", "by", "a", "added");

  private final List<Product> products;

  public ProductSearch(List<Product> products) {
    this.products = List.copyOf(products);
  }

  /** A product, how many of the asked words it has, and where among its own the first stands. */
  private record Hit(Product product, int shared, int first, int words) {}

  /** The products that share the most words with what is asked for, the plainest food first. */
  public List<Product> find(String asked) {
    List<List<String>> names = products.stream().map(p -> names(p).distinct().toList()).toList();
    Set<String> known = new TreeSet<>();
    names.forEach(known::addAll);
    List<String> wanted = words(asked).distinct().map(w -> corrected(w, known)).toList();
    List<Hit> hits = new ArrayList<>();
    for (int i = 0; i < products.size(); i++) {
      List<String> own = names.get(i);
      int shared =
          (int) wanted.stream().filter(w -> own.stream().anyMatch(o -> alike(w, o))).count();
      if (shared > 0) {
        int first = 0;
        while (!hasAny(wanted, own.get(first))) {
          first++;
        }
        hits.add(new Hit(products.get(i), shared, first, own.size()));
      }
    }
    int best = hits.stream().mapToInt(Hit::shared).max().orElse(0);
    return hits.stream()
        .filter(h -> h.shared() == best)
        .sorted(
            Comparator.comparingInt(Hit::first)
                .thenComparing(h -> !PLAIN.contains(h.product().category()))
                .thenComparingInt(Hit::words)
                .thenComparing(h -> h.product().id()))
        .map(Hit::product)
        .toList();
  }

  /**
   * The word itself where it is short or some product has it, else the one of theirs that it is
   * nearest to.
   */
  private static String corrected(String wanted, Set<String> known) {
    if (wanted.length() <= SHORTEST_STEM || known.stream().anyMatch(k -> alike(wanted, k))) {
      return wanted;
    }
    List<String> stems = known.stream().filter(k -> k.length() > SHORTEST_STEM).toList();
    return Nearest.to(wanted, stems).orElse(wanted);
  }

  private static boolean hasAny(List<String> wanted, String own) {
    return wanted.stream().anyMatch(w -> alike(w, own));
  }

  /** The words that a product goes by; not those that its name leaves out with "except". */
  static Stream<String> names(Product product) {
    return words(product.id() + " " + product.name().replaceAll("except [^,)]*", ""));
  }

  static Stream<String> words(String text) {
    return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
        .filter(w -> w.length() > 1 && !EMPTY_WORDS.contains(w))
        .map(ProductSearch::stem);
  }

  /** Plurals fall together with their singulars. */
  private static String stem(String word) {
    if (word.endsWith("ies") && word.length() > SHORTEST_STEM) {
      return word.substring(0, word.length() - 3) + "y";
    }
    if (word.endsWith("oes")) {
      return word.substring(0, word.length() - 2);
    }
    return word.endsWith("s") && word.length() > 3 ? word.substring(0, word.length() - 1) : word;
  }

  private static boolean alike(String wanted, String own) {
    return own.equals(wanted)
        || (wanted.length() >= SHORTEST_STEM && own.startsWith(wanted))
        || (own.length() >= SHORTEST_STEM && wanted.startsWith(own));
  }
}
