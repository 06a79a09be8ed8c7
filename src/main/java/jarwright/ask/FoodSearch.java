package jarwright.ask;

import jarwright.process.Product;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Understands what people ask for. A product is an answer only where its names have every word of
 * the food that was said; what is known to have no tested process goes before products that are
 * only alike.
 */
public final class FoodSearch {
  private static final String ENGLISH = "en";
  private static final int MOST_NEAR = 6;

  private final Map<String, FoodNames> products = new LinkedHashMap<>();
  private final List<UntestedNames> untested;
  private final Lexicon lexicon;
  private final Phrasebook phrases;
  private final Typos typos;
  private final List<Saying> sayings;

  /**
   * @param products every product there is, by its English name
   * @param sayings their names in other languages, household names, and words for jars and the like
   * @param untested every food, way and jar that is known to have no tested process
   */
  public FoodSearch(List<Product> products, List<Saying> sayings, List<Untested> untested) {
    this.sayings = List.copyOf(sayings);
    List<Saying> all = new ArrayList<>(sayings);
    products.forEach(p -> all.addAll(FoodNames.sayings(p)));
    List<Lexicon.Text> texts = new ArrayList<>();
    all.forEach(s -> texts.add(new Lexicon.Text(s.language(), s.words())));
    for (Untested one : untested) {
      one.told().forEach((l, told) -> told.names().forEach(n -> texts.add(new Lexicon.Text(l, n))));
    }
    this.lexicon = new Lexicon(all, texts);
    this.phrases = new Phrasebook(all, untested);
    this.untested =
        untested.stream()
            .filter(u -> u.kind() != Untested.Kind.JAR)
            .map(u -> new UntestedNames(u, lexicon))
            .toList();
    products.forEach(p -> this.products.put(p.id(), new FoodNames(p, lexicon)));
    for (Saying saying : all) {
      if (saying.sense() == Saying.Sense.NAME || saying.sense() == Saying.Sense.FOOD) {
        saying.means().stream()
            .map(this.products::get)
            .filter(p -> p != null)
            .forEach(p -> p.add(saying));
      }
    }
    Set<String> written = new TreeSet<>();
    texts.forEach(t -> written.addAll(Spelling.words(t.text())));
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
    return hear(Spelling.words(words), languages(words), Map.of());
  }

  /** Words with accents are hardly English where they may be of another language. */
  private List<String> languages(String words) {
    List<String> languages = lexicon.languages(Spelling.words(words));
    return Spelling.hasAccents(words)
        ? languages.stream().sorted(Comparator.comparing(ENGLISH::equals)).toList()
        : languages;
  }

  /**
   * Understands the words; where one is not known, as the mistyped one that it may be.
   *
   * @param words as they were typed; a few hundred characters at most
   */
  public Heard hear(String words) {
    Heard heard = hearAsWritten(words);
    if (heard.food() instanceof Meaning.Unknown unknown) {
      Map<String, String> readAs = typos.mend(unknown.words());
      List<String> mended =
          Spelling.words(words).stream().map(w -> readAs.getOrDefault(w, w)).toList();
      Heard again = hear(mended, lexicon.languages(mended), readAs);
      boolean told =
          again.food() instanceof Meaning.Known || again.food() instanceof Meaning.Refused;
      return told ? again : heard;
    }
    return heard;
  }

  /** Understood in the language of most of the words; else in that which understands most. */
  private Heard hear(List<String> words, List<String> languages, Map<String, String> readAs) {
    Optional<Heard> best = Optional.empty();
    int understood = -1;
    for (String language : languages) {
      Phrasebook.Sorted asked = phrases.sort(lexicon.said(words, language));
      Meaning meaning = meaning(asked, readAs);
      int own = understood(meaning, asked);
      if (own > understood) {
        understood = own;
        best = Optional.of(new Heard(meaning, asked.said(), language));
      }
    }
    return best.orElseThrow();
  }

  /** 2 where it goes by just these words, 1 where it has them among others, 0 for neither. */
  private int understood(Meaning meaning, Phrasebook.Sorted asked) {
    if (meaning instanceof Meaning.Known known) {
      String first = known.products().get(0).id();
      return products.get(first).match(asked).filter(m -> m.called() > 0).isPresent() ? 2 : 1;
    }
    if (meaning instanceof Meaning.Refused refused) {
      boolean called =
          untested.stream()
              .filter(u -> u.untested().equals(refused.untested()))
              .anyMatch(u -> u.isCalled(asked));
      return called ? 2 : 1;
    }
    return 0;
  }

  private List<Match> matches(Phrasebook.Sorted asked) {
    return products.values().stream().flatMap(p -> p.match(asked).stream()).toList();
  }

  private Meaning meaning(Phrasebook.Sorted asked, Map<String, String> readAs) {
    List<Match> matches = matches(asked);
    List<UntestedNames> named =
        untested.stream()
            .filter(u -> u.longest(asked) > 0)
            .filter(u -> matches.stream().noneMatch(m -> m.isNamedWith(u.words(asked))))
            .sorted(Comparator.comparingInt((UntestedNames u) -> u.longest(asked)).reversed())
            .toList();
    if (asked.food().isEmpty()) {
      return named.isEmpty()
          ? new Meaning.Nothing()
          : new Meaning.Refused(named.get(0).untested(), List.of(), readAs);
    }
    int longest = matches.stream().mapToInt(Match::called).max().orElse(0);
    Optional<UntestedNames> called = named.stream().filter(u -> u.isCalled(asked)).findFirst();
    if (called.isPresent() && called.get().weight(asked) > longest) {
      return refused(called.get(), asked, readAs);
    }
    List<Match> found =
        matches.stream()
            .filter(m -> m.shared() == asked.food().size())
            .filter(m -> isCalled(m, longest) || named.stream().allMatch(u -> u.isWithin(m, asked)))
            .sorted(Match.likeliest(longest))
            .toList();
    if (!found.isEmpty()) {
      return known(found, longest, readAs, called);
    }
    if (!named.isEmpty()) {
      return refused(named.get(0), asked, readAs);
    }
    List<String> strange =
        asked.food().stream().filter(w -> !lexicon.knows(w)).map(Word::written).distinct().toList();
    return new Meaning.Unknown(strange, typos.guesses(strange), near(matches));
  }

  /** Whether it goes by a name as long as the longest that any goes by. */
  private static boolean isCalled(Match match, int longest) {
    return longest > 0 && match.called() == longest;
  }

  private static Meaning known(
      List<Match> found, int longest, Map<String, String> readAs, Optional<UntestedNames> doubt) {
    List<Match> these = found.stream().filter(m -> isCalled(m, longest)).toList();
    List<Match> others = found.stream().filter(m -> !these.contains(m)).toList();
    return new Meaning.Known(
        products(these.isEmpty() ? found : these),
        products(these.isEmpty() ? List.of() : others),
        these.size() == 1 && readAs.isEmpty()
            ? Optional.of(these.get(0).product().product())
            : Optional.empty(),
        readAs,
        doubt.map(UntestedNames::untested));
  }

  private Meaning refused(UntestedNames why, Phrasebook.Sorted asked, Map<String, String> readAs) {
    Set<String> named = why.words(asked);
    List<Word> rest =
        asked.food().stream().filter(w -> w.stems().stream().noneMatch(named::contains)).toList();
    List<Match> near =
        rest.isEmpty()
            ? List.of()
            : matches(asked.with(rest)).stream().filter(m -> m.shared() == rest.size()).toList();
    return new Meaning.Refused(why.untested(), likeliest(near), readAs);
  }

  /** Products that have the most of the words. */
  private static List<Product> near(List<Match> matches) {
    int most = matches.stream().mapToInt(Match::shared).max().orElse(0);
    return likeliest(matches.stream().filter(m -> most > 0 && m.shared() == most).toList());
  }

  private static List<Product> likeliest(List<Match> matches) {
    return products(matches.stream().sorted(Match.likeliest(0)).limit(MOST_NEAR).toList());
  }

  private static List<Product> products(List<Match> matches) {
    return matches.stream().map(m -> m.product().product()).toList();
  }
}
