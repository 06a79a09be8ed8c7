package jarwright.ask;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Reads words: in which language they are, which say nothing of a food, which turn the next one
 * round, and what each stems from.
 */
final class Lexicon {
  private final Set<String> languages = new TreeSet<>();
  private final Set<String> known = new HashSet<>();
  private final Map<String, Set<String>> written = new TreeMap<>();
  private final Set<String> fillers;
  private final Set<String> stops;
  private final Set<String> negators;

  /** A text in a language, as a name. */
  record Text(String language, String text) {}

  /**
   * @param sayings those for words that say nothing, or turn round, among them
   * @param texts everything that has a name
   */
  Lexicon(List<Saying> sayings, List<Text> texts) {
    for (Text text : texts) {
      languages.add(text.language());
      for (String word : Spelling.words(text.text())) {
        known.add(Spelling.stem(text.language(), word));
        written.computeIfAbsent(text.language(), l -> new HashSet<>()).add(word);
      }
    }
    this.fillers = single(sayings, Saying.Sense.FILLER);
    this.stops = single(sayings, Saying.Sense.STOP);
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

  /** Whether something here is called by the word, or by a name that it belongs to. */
  boolean knows(Word word) {
    return Spelling.isNumber(word.written()) || isAny(word.raw(), known);
  }

  /**
   * The languages that the words may be in, the likeliest first: that which more of them are in
   * than in any other, or all where two are level, as for words that both have.
   */
  List<String> languages(List<String> words) {
    Map<String, Integer> counts = new TreeMap<>();
    for (String word : words) {
      Set<String> in = languages(word);
      if (in.size() == 1 && !Spelling.isNumber(word)) {
        counts.merge(in.iterator().next(), 1, Integer::sum);
      }
    }
    int most = counts.values().stream().mapToInt(n -> n).max().orElse(0);
    List<String> first = counts.keySet().stream().filter(l -> counts.get(l) == most).toList();
    return first.size() == 1 ? first : List.copyOf(languages);
  }

  /** Where the word itself stands in a name; else where another form of it does; else none. */
  private Set<String> languages(String word) {
    Set<String> itself = in(l -> written.getOrDefault(l, Set.of()).contains(word));
    return itself.isEmpty() ? in(l -> known.contains(Spelling.stem(l, word))) : itself;
  }

  private Set<String> in(Predicate<String> test) {
    return languages.stream().filter(test).collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * The words of something said.
   *
   * @param own the language of the whole: a word that is known in it is taken in it alone, so that
   *     an English lime is no Spanish lima
   */
  List<Word> said(List<String> words, String own) {
    return read(
        words,
        word -> {
          Set<String> in = languages(word);
          return in.contains(own) ? Set.of(own) : in.isEmpty() ? languages : in;
        });
  }

  /** What a name in one language is compared by, in its order. */
  List<String> stems(String language, String name) {
    return read(Spelling.words(name), word -> Set.of(language)).stream()
        .filter(w -> w.kind() != Word.Kind.STOP)
        .flatMap(w -> w.stems().stream())
        .toList();
  }

  private List<Word> read(List<String> written, Function<String, Set<String>> languages) {
    List<Word> words = new ArrayList<>();
    boolean turned = false;
    for (String word : written) {
      Set<String> raw =
          languages.apply(word).stream()
              .map(l -> Spelling.stem(l, word))
              .collect(Collectors.toSet());
      boolean negator = isAny(raw, negators);
      boolean stop = negator || isAny(raw, stops);
      boolean marked = turned && !stop;
      boolean filler = !marked && isAny(raw, fillers);
      Word.Kind kind = stop ? Word.Kind.STOP : filler ? Word.Kind.FILLER : Word.Kind.NAMING;
      words.add(new Word(word, raw, marked, kind));
      turned = negator || (turned && stop);
    }
    return words;
  }

  private static boolean isAny(Set<String> stems, Set<String> known) {
    return stems.stream().anyMatch(known::contains);
  }
}
