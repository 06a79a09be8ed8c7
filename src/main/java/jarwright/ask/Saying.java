package jarwright.ask;

import java.util.List;

/**
 * A name that people use, and what it stands for.
 *
 * @param means ids: products for {@link Sense#NAME} and {@link Sense#FOOD}, one jar size, methods,
 *     one pack, one acid, one cover; one unit for {@link Sense#TIME} and {@link Sense#ALTITUDE};
 *     none for the others
 * @param language tag of the language it is said in, as {@code en}
 * @param words the name, one word or several
 */
public record Saying(Sense sense, List<String> means, String language, String words) {
  public Saying {
    means = List.copyOf(means);
    if (Spelling.words(words).isEmpty() || means.isEmpty() != sense.isAlone()) {
      throw new IllegalArgumentException("a name needs words, and what it stands for");
    }
  }

  /** Whether it is just these words, as {@link Spelling#words} gives them. */
  boolean isCalled(List<String> said) {
    List<String> own = Spelling.words(words);
    if (own.size() != said.size()) {
      return false;
    }
    for (int i = 0; i < own.size(); i++) {
      if (!Spelling.stem(language, own.get(i)).equals(Spelling.stem(language, said.get(i)))) {
        return false;
      }
    }
    return true;
  }

  /** What kind of thing a name is for. */
  public enum Sense {
    /** The own name of one product in a language. */
    NAME,
    /** What a household calls one product, or several alike. */
    FOOD,
    JAR,
    METHOD,
    PACK,
    /** An acid that goes into every jar. */
    ACID,
    /** The liquid that covers fruit. */
    COVER,
    /** A unit of time, after a number. */
    TIME,
    /** A unit of altitude, after a number. */
    ALTITUDE,
    /** A number in letters. */
    NUMBER,
    /** Turns the next word round, as "without". */
    NOT,
    /** Small words that no name is told by, as "of" and "any". */
    STOP,
    /** Says nothing of the food, as "how to can". */
    FILLER;

    boolean isAlone() {
      return compareTo(NUMBER) >= 0;
    }
  }
}
