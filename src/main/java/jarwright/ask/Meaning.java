package jarwright.ask;

import jarwright.process.Product;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What somebody's words for a food mean. */
public sealed interface Meaning {

  /**
   * Products whose names have every word that was said.
   *
   * @param products those that go by just these words, else all that have them; the likeliest
   *     first, never empty
   * @param others more that have the words, where some go by them
   * @param one the product, where the words are a name of that one alone
   * @param readAs words that were taken for mistyped ones, as {@code peches} for {@code peaches}
   * @param doubt a later source that warns of the first product
   */
  record Known(
      List<Product> products,
      List<Product> others,
      Optional<Product> one,
      Map<String, String> readAs,
      Optional<Untested> doubt)
      implements Meaning {
    public Known {
      products = List.copyOf(products);
      others = List.copyOf(others);
      readAs = Map.copyOf(readAs);
    }
  }

  /**
   * Something that is known to have no tested process.
   *
   * @param near products that the rest of the words names
   */
  record Refused(Untested untested, List<Product> near, Map<String, String> readAs)
      implements Meaning {
    public Refused {
      near = List.copyOf(near);
      readAs = Map.copyOf(readAs);
    }
  }

  /**
   * No product and no refusal has all of the words.
   *
   * @param words those that nothing here is called by; empty where each is known by itself
   * @param guesses known words that they may have been meant for
   * @param near products that have some of the words
   */
  record Unknown(List<String> words, List<String> guesses, List<Product> near) implements Meaning {
    public Unknown {
      words = List.copyOf(words);
      guesses = List.copyOf(guesses);
      near = List.copyOf(near);
    }
  }

  /** No food was named. */
  record Nothing() implements Meaning {}
}
