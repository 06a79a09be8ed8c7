package jarwright.ask;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Reads words: which say nothing of a food, which turn the next one round, what each stems from.
 */
final class Lexicon {
  private static final String TURNED = "not ";

  private final Set<String> languages;
  private final Set<String> fillers;
  private final Set<String> articles;
  private final Set<String> negators;

  Lexicon(Set<String> languages, List<Saying> sayings) {
    this.languages = new TreeSet<>(languages);
    this.fillers = single(sayings, Saying.Sense.FILLER);
    this.articles = single(sayings, Saying.Sense.ARTICLE);
    this.negators = single(sayings, Saying.Sense.NOT);
  }

  private static Set<String> single(List<Saying> sayings, Saying.Sense sense) {
    Set<String> stems = new HashSet<>();
    for (Saying saying : sayings) {
      List<String> words = Spelling.words(saying.words());
      if (saying.sense() == sense && words.size() == 1) {
        stems.add(Spelling.stem(saying.language(), words.get(0)));
      }
    }
    return stems;
  }

  /** The words of something said in any language. */
  List<Word> said(String text) {
    return read(languages, Spelling.words(text));
  }

  /** What a name in one language is compared by, in its order. */
  Set<String> stems(String language, String name) {
    return read(Set.of(language), Spelling.words(name)).stream()
        .filter(w -> !w.empty())
        .flatMap(w -> w.stems().stream())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private List<Word> read(Set<String> languages, List<String> written) {
    List<Word> words = new ArrayList<>();
    boolean turned = false;
    for (String word : written) {
      Set<String> raw =
          languages.stream().map(l -> Spelling.stem(l, word)).collect(Collectors.toSet());
      boolean negator = isAny(raw, negators);
      boolean article = isAny(raw, articles);
      boolean marked = turned && !negator && !article;
      words.add(
          new Word(
              word,
              raw,
              marked ? raw.stream().map(TURNED::concat).collect(Collectors.toSet()) : raw,
              negator || article || (!marked && isAny(raw, fillers))));
      turned = negator || (turned && article);
    }
    return words;
  }

  private static boolean isAny(Set<String> stems, Set<String> known) {
    return stems.stream().anyMatch(known::contains);
  }
}
