package jarwright.ask;

import jarwright.process.Product;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Understands what people ask for. A product is an answer only where its names have every word of
 * the food that was said; what is known to have no tested process goes before products that are
 * only alike.
 */
public final class FoodSearch {
  private static final int MOST_NEAR = 6;

  private final Map<String, FoodNames> products = new LinkedHashMap<>();
  private final List<UntestedNames> untested;
  private final Lexicon lexicon;
  private final Phrasebook phrases;
  private final Set<String> known = new HashSet<>();
  private final Typos typos;
  private final List<Saying> sayings;

  /**
   * @param products every product there is
   * @param sayings their names in other languages, household names, and words for jars and the like
   */
  public FoodSearch(List<Product> products, List<Saying> sayings, List<Untested> untested) {
    Set<String> languages = new TreeSet<>(Set.of("en"));
    sayings.forEach(s -> languages.add(s.language()));
    this.sayings = List.copyOf(sayings);
    this.lexicon = new Lexicon(languages, sayings);
    this.phrases = new Phrasebook(sayings, untested);
    this.untested =
        untested.stream()
            .filter(u -> u.kind() != Untested.Kind.JAR)
            .map(u -> new UntestedNames(u, lexicon))
            .toList();
    products.forEach(p -> this.products.put(p.id(), new FoodNames(p, lexicon)));
    Set<String> written = new TreeSet<>();
    for (Saying saying : sayings) {
      written.addAll(Spelling.words(saying.words()));
      known.addAll(lexicon.stems(saying.language(), saying.words()));
      if (saying.sense().compareTo(Saying.Sense.FOOD) <= 0) {
        saying.means().stream()
            .map(this.products::get)
            .filter(p -> p != null)
            .forEach(p -> p.add(saying));
      }
    }
    for (FoodNames one : this.products.values()) {
      known.addAll(one.words());
      written.addAll(Spelling.words(one.product().id() + " " + one.product().name()));
    }
    for (UntestedNames one : this.untested) {
      known.addAll(one.words());
      one.untested()
          .told()
          .values()
          .forEach(t -> t.names().forEach(n -> written.addAll(Spelling.words(n))));
    }
    this.typos = new Typos(written);
  }

  /**
   * What the whole of the words is a name of, in one language or several.
   *
   * @return ids, as the sayings have them; none where the words are no such name
   */
  public Set<String> called(Saying.Sense sense, String words) {
    List<String> said = Spelling.words(words);
    Set<String> ids = new TreeSet<>();
    for (Saying saying : sayings) {
      if (saying.sense() == sense && saying.isCalled(said)) {
        ids.addAll(saying.means());
      }
    }
    return ids;
  }

  /** The same with every word as it stands: none is taken for a mistyped one. */
  public Heard hearAsWritten(String words) {
    List<Word> said = lexicon.said(words);
    Phrasebook.Heard heard = phrases.hear(said);
    return new Heard(meaning(said, heard.food(), Map.of()), heard.said(), language(said));
  }

  /**
   * Understands the words; where one is not known, as the mistyped one that it may be.
   *
   * @param words as they were typed; a few hundred characters at most
   */
  public Heard hear(String words) {
    Heard heard = hearAsWritten(words);
    if (heard.food() instanceof Meaning.Unknown unknown && !unknown.words().isEmpty()) {
      Map<String, String> readAs = typos.mend(unknown.words());
      List<String> mended =
          lexicon.said(words).stream()
              .map(w -> readAs.getOrDefault(w.written(), w.written()))
              .toList();
      List<Word> again = lexicon.said(String.join(" ", mended));
      Meaning second = meaning(again, phrases.hear(again).food(), readAs);
      if (!readAs.isEmpty() && !(second instanceof Meaning.Unknown)) {
        return new Heard(second, phrases.hear(again).said(), language(again));
      }
    }
    return heard;
  }

  private Meaning meaning(List<Word> words, List<Word> left, Map<String, String> readAs) {
    List<Word> food = left.stream().filter(w -> !w.empty()).toList();
    Set<String> said = words.stream().flatMap(w -> w.stems().stream()).collect(Collectors.toSet());
    List<UntestedNames> named =
        untested.stream()
            .filter(u -> u.longest(said) > 0)
            .sorted(Comparator.comparingInt((UntestedNames u) -> u.longest(said)).reversed())
            .toList();
    if (food.isEmpty()) {
      return named.isEmpty()
          ? new Meaning.Nothing()
          : new Meaning.Refused(named.get(0).untested(), List.of(), readAs);
    }
    Optional<UntestedNames> called = named.stream().filter(u -> u.isCalled(food, said)).findFirst();
    List<FoodNames> own = products.values().stream().filter(p -> p.isCalled(food, said)).toList();
    int ownLength = own.stream().mapToInt(p -> p.longest(said)).max().orElse(0);
    if (called.isPresent() && called.get().longest(said) > ownLength) {
      return refused(called.get(), food, said, readAs);
    }
    List<FoodNames> found =
        products.values().stream()
            .filter(p -> p.covers(food, said))
            .filter(p -> own.contains(p) || named.stream().allMatch(u -> u.isWithin(p, said)))
            .sorted(likeliest(food, said))
            .toList();
    if (!found.isEmpty()) {
      Optional<Product> one =
          own.size() == 1 && readAs.isEmpty()
              ? Optional.of(own.get(0).product())
              : Optional.empty();
      return new Meaning.Known(products(found), one, readAs, called.map(UntestedNames::untested));
    }
    if (!named.isEmpty()) {
      return refused(named.get(0), food, said, readAs);
    }
    List<String> strange =
        food.stream()
            .filter(
                w ->
                    w.raw().stream().noneMatch(known::contains)
                        && w.stems().stream().noneMatch(known::contains))
            .map(Word::written)
            .distinct()
            .toList();
    return new Meaning.Unknown(strange, near(food, said));
  }

  private Meaning refused(
      UntestedNames why, List<Word> food, Set<String> said, Map<String, String> readAs) {
    Set<String> named = why.said(said);
    List<Word> rest =
        food.stream().filter(w -> w.stems().stream().noneMatch(named::contains)).toList();
    List<FoodNames> near =
        rest.isEmpty()
            ? List.of()
            : products.values().stream()
                .filter(p -> p.covers(rest, said))
                .sorted(likeliest(rest, said))
                .limit(MOST_NEAR)
                .toList();
    return new Meaning.Refused(why.untested(), products(near), readAs);
  }

  /** Products that have the most of the words. */
  private List<Product> near(List<Word> food, Set<String> said) {
    Map<FoodNames, Integer> shared = new HashMap<>();
    products.values().forEach(p -> shared.put(p, p.shared(food, said)));
    int most = shared.values().stream().mapToInt(n -> n).max().orElse(0);
    return most == 0
        ? List.of()
        : products(
            products.values().stream()
                .filter(p -> shared.get(p) == most)
                .sorted(likeliest(food, said))
                .limit(MOST_NEAR)
                .toList());
  }

  private static Comparator<FoodNames> likeliest(List<Word> food, Set<String> said) {
    return Comparator.comparing((FoodNames p) -> !p.isCalled(food, said))
        .thenComparing(p -> p.longest(said) == 0)
        .thenComparingInt(p -> p.first(food))
        .thenComparing(p -> !p.isPlain())
        .thenComparingInt(FoodNames::length)
        .thenComparing(p -> p.product().id());
  }

  private static List<Product> products(List<FoodNames> names) {
    return names.stream().map(FoodNames::product).toList();
  }

  /** The language that more of the words are in alone; English where neither has more. */
  private String language(List<Word> words) {
    Map<String, Integer> counts = new HashMap<>();
    for (Word word : words) {
      List<String> in = new ArrayList<>();
      for (String stem : word.raw()) {
        if (known.contains(stem) && stem.indexOf(':') > 0) {
          in.add(stem.substring(0, stem.indexOf(':')));
        }
      }
      if (in.size() == 1) {
        counts.merge(in.get(0), 1, Integer::sum);
      }
    }
    return counts.entrySet().stream()
        .filter(e -> e.getValue() > counts.getOrDefault("en", 0))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse("en");
  }
}
