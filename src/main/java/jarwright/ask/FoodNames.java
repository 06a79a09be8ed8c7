package jarwright.ask;

import jarwright.process.Product;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** All that one product is called, ready to be compared. */
final class FoodNames {
  /** Kinds of food canned as it is; salsas, pickles and spreads made of it stand behind. */
  private static final Set<String> PLAIN =
      Set.of("fruit", "tomato", "vegetables", "poultry", "red-meats", "seafoods");

  private static final String ENGLISH = "en";
  static final int FAR = 1_000;

  private final Product product;
  private final Lexicon lexicon;

  /** Its own names by language, word after word; the first is the plainest. */
  private final Map<String, Set<String>> own = new LinkedHashMap<>();

  /** Words that may stand for it: those of its own names outside of brackets. */
  private final Set<String> heads = new HashSet<>();

  private final Set<String> base = new HashSet<>();

  /** Every word of every name. */
  private final Set<String> words = new HashSet<>();

  private final List<Name> names = new ArrayList<>();

  /**
   * A name by itself.
   *
   * @param stems in their order
   * @param own whether it is the product's whole own name
   * @param place of the product among those that go by the name
   */
  record Name(List<String> stems, boolean own, int place) {
    private static final int WORD = 4;
    private static final int ORDER = 2;

    /** More for more words, among as many for the same order, then for an own name. */
    int weight(Phrasebook.Sorted asked) {
      return weight(stems) + (asked.isInOrder(stems) ? ORDER : 0) + (own ? 1 : 0);
    }

    static int weight(Collection<String> stems) {
      return WORD * Set.copyOf(stems).size();
    }
  }

  /** What a name weighs that is no product's own. */
  static int weight(Set<String> stems) {
    return Name.weight(stems);
  }

  FoodNames(Product product, Lexicon lexicon) {
    this.product = product;
    this.lexicon = lexicon;
  }

  /** The names by which a product goes in the tables; the search makes sayings of them. */
  static List<Saying> sayings(Product product) {
    List<String> id = List.of(product.id());
    return List.of(
        new Saying(Saying.Sense.NAME, id, ENGLISH, product.id()),
        new Saying(Saying.Sense.NAME, id, ENGLISH, product.name()));
  }

  void add(Saying saying) {
    List<String> all = lexicon.stems(saying.language(), saying.words());
    words.addAll(all);
    if (saying.sense() != Saying.Sense.NAME) {
      names.add(new Name(all, false, saying.means().indexOf(product.id())));
      return;
    }
    String plain = saying.words().replaceAll("\\([^)]*+\\)", " ");
    List<String> head = lexicon.stems(saying.language(), plain);
    own.computeIfAbsent(saying.language(), l -> new LinkedHashSet<>()).addAll(all);
    base.addAll(all);
    heads.addAll(head);
    names.add(new Name(all, true, 0));
    names.add(new Name(head, false, 0));
  }

  Product product() {
    return product;
  }

  /** How it answers to what was asked; empty where it has none of the words. */
  Optional<Match> match(Phrasebook.Sorted asked) {
    return Collections.disjoint(words, asked.all())
        ? Optional.empty()
        : Optional.of(new Match(this, asked));
  }

  /** Its names that are said whole. */
  List<Name> said(Phrasebook.Sorted asked) {
    return names.stream().filter(n -> asked.all().containsAll(n.stems())).toList();
  }

  /** Words of its own names. */
  Set<String> base() {
    return base;
  }

  /** Whether a word may stand for it. */
  boolean isHead(Word word) {
    return !Collections.disjoint(heads, word.stems());
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
