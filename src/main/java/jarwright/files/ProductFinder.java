package jarwright.files;

import jarwright.ask.Heard;
import jarwright.ask.Meaning;
import jarwright.ask.Untested;
import jarwright.problem.Refused;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds the product that a plan names, or says what it may have meant. */
final class ProductFinder {
  private static final int MOST_SHOWN = 4;

  private final ProcessBook asked;
  private final PlanWords household;

  /**
   * @param words the products that will be asked for, as the plan has them
   */
  ProductFinder(ProcessTables tables, Set<String> words, PlanWords household) throws Refused {
    this.household = household;
    this.asked = tables.bookOf(words);
  }

  /**
   * The product named in a batch, by its id or by what a household calls this one alone; otherwise
   * a problem that says what may have been meant.
   */
  Optional<Product> find(Fields batch, String key) throws IOException, Refused {
    Optional<String> word = batch.plainWord(key);
    if (word.isEmpty()) {
      return Optional.empty();
    }
    Optional<Product> product = asked.product(word.get());
    return product.isPresent() ? product : heard(batch, key, word.get());
  }

  private Optional<Product> heard(Fields batch, String key, String word)
      throws IOException, Refused {
    Heard heard = household.search().hear(word);
    if (heard.food() instanceof Meaning.Refused refused) {
      Untested way = refused.untested();
      batch.problem(key, "no tested process for " + way.what() + ": " + way.why(), way.remedy());
      return Optional.empty();
    }
    if (heard.food() instanceof Meaning.Known known) {
      if (known.one().isPresent() && heard.said().isNothing()) {
        return known.one();
      }
      tell(batch, key, known.products());
    } else if (heard.food() instanceof Meaning.Unknown unknown) {
      tell(batch, key, unknown.near());
    } else {
      tell(batch, key, List.of());
    }
    return Optional.empty();
  }

  private static void tell(Fields batch, String key, List<Product> near) {
    List<String> shown = near.stream().limit(MOST_SHOWN).map(Product::id).toList();
    String lookUp = "jarwright process " + batch.said(key);
    String more = near.size() > MOST_SHOWN ? " or one of those that are shown by " + lookUp : "";
    batch.problem(
        key,
        "there is no product \"" + batch.said(key) + "\"",
        shown.isEmpty()
            ? "look for it with: " + lookUp
            : "did you mean " + String.join(" or ", shown) + more + "?");
  }
}
