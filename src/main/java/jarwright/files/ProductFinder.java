package jarwright.files;

import jarwright.problem.Refused;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.Untested;
import java.io.IOException;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds the product that a plan names, or says what it may have meant. */
final class ProductFinder {
  private static final int MOST_SHOWN = 4;
  private static final int SHORTEST_STEM = 4;
  private static final Set<String> EMPTY_WORDS =
      Set.of("and", "or", "in", "no", "of", "the", "with", "for", "by", "a", "added");

  private final ProcessBook book;

  ProductFinder(ProcessBook book) {
    this.book = book;
  }

  /** The product named in a batch; otherwise a problem that says what may have been meant. */
  Optional<Product> find(Fields batch, String key) throws IOException, Refused {
    Optional<String> id = batch.plainWord(key);
    if (id.isEmpty()) {
      return Optional.empty();
    }
    Optional<Product> found = book.product(id.get());
    if (found.isEmpty()) {
      tell(batch, key, id.get());
    }
    return found;
  }

  private void tell(Fields batch, String key, String word) throws IOException, Refused {
    for (Untested untested : UntestedRows.read()) {
      if (untested.isCalled(word)) {
        batch.problem(
            key, untested.what() + " has no tested process: " + untested.why(), untested.instead());
        return;
      }
    }
    List<String> near = near(word);
    batch.problem(
        key,
        "there is no product \"" + Fields.shown(word) + "\"",
        near.isEmpty()
            ? "look for it with: jarwright process " + firstWord(word)
            : "did you mean " + String.join(" or ", near) + "?");
  }

  private static String firstWord(String word) {
    return words(word).findFirst().orElse("WORD");
  }

  /** The products that share the most words with what was asked for, the plainest first. */
  List<String> near(String asked) {
    List<String> wanted = words(asked).distinct().toList();
    Map<String, Integer> hits = new LinkedHashMap<>();
    for (Product product : book.products()) {
      List<String> own = words(product.id() + " " + product.name()).distinct().toList();
      int shared =
          (int) wanted.stream().filter(w -> own.stream().anyMatch(o -> alike(w, o))).count();
      if (shared > 0) {
        hits.put(product.id(), shared * 100 - own.size());
      }
    }
    int best = hits.values().stream().mapToInt(h -> (h + 99) / 100).max().orElse(0);
    return hits.entrySet().stream()
        .filter(h -> (h.getValue() + 99) / 100 == best)
        .sorted(Comparator.comparing((Map.Entry<String, Integer> h) -> -h.getValue()))
        .limit(MOST_SHOWN)
        .map(Map.Entry::getKey)
        .collect(Collectors.toList());
  }

  private static Stream<String> words(String text) {
    return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
        .filter(w -> w.length() > 1 && !EMPTY_WORDS.contains(w))
        .map(ProductFinder::stem);
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
        || (own.length() >= SHORTEST_STEM && wanted.startsWith(own))
        || (wanted.length() > SHORTEST_STEM
            && jarwright.problem.Nearest.to(wanted, List.of(own)).isPresent());
  }
}
