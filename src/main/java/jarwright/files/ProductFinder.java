package jarwright.files;

import jarwright.problem.Refused;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.ProductSearch;
import jarwright.process.Untested;
import jarwright.process.UntestedSearch;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Finds the product that a plan names, or says what it may have meant. */
final class ProductFinder {
  private static final int MOST_SHOWN = 4;

  private final ProcessTables tables;
  private final ProcessBook asked;

  /**
   * @param words the products that will be asked for, as the plan has them
   */
  ProductFinder(ProcessTables tables, Set<String> words) throws Refused {
    this.tables = tables;
    this.asked = tables.bookOf(words);
  }

  /** The product named in a batch; otherwise a problem that says what may have been meant. */
  Optional<Product> find(Fields batch, String key) throws IOException, Refused {
    Optional<String> id = batch.plainWord(key);
    if (id.isEmpty()) {
      return Optional.empty();
    }
    Optional<Product> found = asked.product(id.get());
    if (found.isEmpty()) {
      tell(batch, key, id.get());
    }
    return found;
  }

  private void tell(Fields batch, String key, String word) throws IOException, Refused {
    UntestedSearch search = new UntestedSearch(UntestedRows.read(), tables.products());
    Optional<Untested> untested = search.isProduct(word) ? Optional.empty() : search.find(word);
    if (untested.isPresent()) {
      Untested way = untested.get();
      batch.problem(key, "no tested process for " + way.what() + ": " + way.why(), way.remedy());
      return;
    }
    List<String> near = near(word);
    String lookUp = "jarwright process " + firstWord(word);
    String more = near.size() > MOST_SHOWN ? " or one of those that are shown by " + lookUp : "";
    List<String> shown = near.subList(0, Math.min(MOST_SHOWN, near.size()));
    batch.problem(
        key,
        "there is no product \"" + batch.said(key) + "\"",
        near.isEmpty()
            ? "look for it with: " + lookUp
            : "did you mean " + String.join(" or ", shown) + more + "?");
  }

  private static String firstWord(String word) {
    return Stream.of(word.split("[^\\p{L}]+")).filter(w -> !w.isEmpty()).findFirst().orElse("WORD");
  }

  /** The products that share the most words with what was asked for, the plainest first. */
  private List<String> near(String word) throws Refused {
    return new ProductSearch(tables.products()).find(word).stream().map(Product::id).toList();
  }
}
