package jarwright.ask;

import static jarwright.ask.Saying.Sense.ACID;
import static jarwright.ask.Saying.Sense.COVER;
import static jarwright.ask.Saying.Sense.FILLER;
import static jarwright.ask.Saying.Sense.JAR;
import static jarwright.ask.Saying.Sense.METHOD;
import static jarwright.ask.Saying.Sense.PACK;

import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Tells which of the words said name a jar, a method, a pack and the like, and which the food. */
final class Phrasebook {
  /** A name as it stands, word after word, and what it is for; an untested jar, or a saying. */
  private record Phrase(List<String> stems, Saying.Sense sense, Object meaning) {}

  private static final String HOUR = "hour";

  /** Phrases that say nothing of the food; a single word of theirs may still belong to a name. */
  private static final Set<Saying.Sense> SILENT = Set.of(ACID, COVER, FILLER);

  private final Map<String, List<Phrase>> byFirst = new HashMap<>();

  Phrasebook(List<Saying> sayings, List<Untested> untested) {
    for (Saying saying : sayings) {
      add(saying.language(), saying.words(), saying.sense(), saying);
    }
    for (Untested one : untested) {
      boolean jar = one.kind() == Untested.Kind.JAR;
      Saying.Sense sense = jar ? Saying.Sense.JAR : Saying.Sense.FOOD;
      one.told().forEach((l, told) -> told.names().forEach(name -> add(l, name, sense, one)));
    }
  }

  private void add(String language, String name, Saying.Sense sense, Object meaning) {
    List<String> stems =
        Spelling.words(name).stream().map(w -> Spelling.stem(language, w)).toList();
    byFirst
        .computeIfAbsent(stems.get(0), s -> new ArrayList<>())
        .add(new Phrase(stems, sense, meaning));
  }

  /**
   * The words, sorted.
   *
   * @param said what was said beside the food
   * @param words all, in their order
   * @param food the words that are left for it, in their order, without those that say nothing
   * @param all every stem, save of phrases that say nothing, as "with lemon juice"
   * @param aside stems of the words for jar, method and pack
   */
  record Sorted(Said said, List<Word> words, List<Word> food, Set<String> all, Set<String> aside) {
    /** The same with only some of the food. */
    Sorted with(List<Word> rest) {
      return new Sorted(said, words, rest, all, aside);
    }

    /** Whether just these stems were said, in this order. */
    boolean isInOrder(List<String> stems) {
      List<Word> told = words.stream().filter(w -> w.kind() != Word.Kind.STOP).toList();
      return told.size() == stems.size()
          && IntStream.range(0, stems.size())
              .allMatch(i -> told.get(i).stems().contains(stems.get(i)));
    }
  }

  Sorted sort(List<Word> words) {
    Listening listening = new Listening();
    int at = 0;
    while (at < words.size()) {
      at += listening.take(words, at);
    }
    return listening.sorted(words);
  }

  /** The longest name that begins at a word; of two of a length a food's. */
  private Optional<Phrase> longest(List<Word> words, int from) {
    Phrase longest = null;
    for (String first : words.get(from).raw()) {
      for (Phrase phrase : byFirst.getOrDefault(first, List.of())) {
        if (isAt(phrase, words, from) && (longest == null || goesBefore(phrase, longest))) {
          longest = phrase;
        }
      }
    }
    return Optional.ofNullable(longest);
  }

  private static boolean goesBefore(Phrase one, Phrase other) {
    int more = one.stems().size() - other.stems().size();
    return more > 0 || (more == 0 && one.sense().compareTo(other.sense()) < 0);
  }

  private static boolean isAt(Phrase phrase, List<Word> words, int from) {
    int size = phrase.stems().size();
    if (from + size > words.size()) {
      return false;
    }
    for (int i = 0; i < size; i++) {
      if (!words.get(from + i).raw().contains(phrase.stems().get(i))) {
        return false;
      }
    }
    return true;
  }

  /** One listening: words are taken from the left. */
  private final class Listening {
    private final List<Word> food = new ArrayList<>();
    private final Set<String> all = new HashSet<>();
    private final Set<String> aside = new HashSet<>();
    private final Set<Method> methods = new LinkedHashSet<>();
    private final List<Pack> packs = new ArrayList<>();
    private final List<Phrase> jars = new ArrayList<>();
    private final List<String> times = new ArrayList<>();
    private final Set<String> units = new LinkedHashSet<>();
    private final List<String> altitudes = new ArrayList<>();
    private final List<Word> counts = new ArrayList<>();

    /** Takes what begins at a word, and says how many words that is. */
    int take(List<Word> words, int at) {
      Optional<Phrase> phrase = longest(words, at);
      int size = phrase.map(p -> p.stems().size()).orElse(1);
      Saying.Sense sense = phrase.map(Phrase::sense).orElse(Saying.Sense.FOOD);
      boolean number = sense == Saying.Sense.NUMBER || Spelling.isNumber(words.get(at).written());
      if (number && (phrase.isEmpty() || sense == Saying.Sense.NUMBER)) {
        return number(words, at, size);
      }
      List<Word> own = words.subList(at, at + size);
      switch (sense) {
        case JAR -> jars.add(phrase.get());
        case METHOD -> meaning(phrase.get()).forEach(m -> methods.add(method(m)));
        case PACK -> Pack.named(meaning(phrase.get()).get(0)).ifPresent(packs::add);
        case NAME, FOOD, TIME, ALTITUDE, NUMBER, NOT, STOP -> food.addAll(own);
        case ACID, COVER, FILLER -> food.addAll(size == 1 ? own : List.of());
      }
      boolean beside = Set.of(JAR, METHOD, PACK).contains(sense);
      for (Word word : own) {
        if (word.turned() || size == 1 || !SILENT.contains(sense)) {
          all.addAll(word.stems());
        }
        if (beside) {
          aside.addAll(word.stems());
        }
      }
      return size;
    }

    /** A number belongs to the unit, or to the jars, that it stands before; else to the food. */
    private int number(List<Word> words, int at, int size) {
      int after = at + size;
      Optional<Phrase> unit = after < words.size() ? longest(words, after) : Optional.empty();
      Saying.Sense sense = unit.map(Phrase::sense).orElse(Saying.Sense.FOOD);
      if (sense == Saying.Sense.TIME || sense == Saying.Sense.ALTITUDE) {
        int end = after + unit.get().stems().size();
        String written =
            String.join(" ", words.subList(at, end).stream().map(Word::written).toList());
        if (sense == Saying.Sense.TIME) {
          times.add(written);
          units.addAll(meaning(unit.get()));
        } else {
          altitudes.add(words.get(at).written() + " " + meaning(unit.get()).get(0));
        }
        return end - at;
      }
      if (sense == Saying.Sense.JAR) {
        counts.add(words.get(at));
      }
      for (Word word : words.subList(at, after)) {
        all.addAll(word.stems());
        if (sense != Saying.Sense.JAR) {
          food.add(word);
        }
      }
      return size;
    }

    Sorted sorted(List<Word> words) {
      Optional<Phrase> jar = last(jars);
      return new Sorted(
          new Said(
              last(packs),
              jar.flatMap(Phrasebook::size),
              jar.filter(j -> j.meaning() instanceof Untested).map(j -> (Untested) j.meaning()),
              List.copyOf(methods),
              times,
              units.contains(HOUR),
              last(altitudes),
              new Said.Choices(
                  packs, jars.stream().flatMap(j -> size(j).stream()).toList(), !counts.isEmpty())),
          words,
          food.stream().filter(w -> w.kind() == Word.Kind.NAMING).toList(),
          all,
          aside);
    }
  }

  /** Of two of a kind the one that was said last. */
  private static <T> Optional<T> last(List<T> said) {
    return said.isEmpty() ? Optional.empty() : Optional.of(said.get(said.size() - 1));
  }

  /** A jar that few products are tested in is a size too. */
  private static Optional<JarSize> size(Phrase jar) {
    return JarSize.named(
        jar.meaning() instanceof Untested untested ? untested.key() : meaning(jar).get(0));
  }

  private static List<String> meaning(Phrase phrase) {
    return ((Saying) phrase.meaning()).means();
  }

  private static Method method(String id) {
    return Method.named(id).orElseThrow(() -> new IllegalStateException(id + " is no method"));
  }
}
