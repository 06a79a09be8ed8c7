package jarwright.ask;

import jarwright.process.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A food, a way of canning or a jar that people ask for and that has no tested process here.
 *
 * @param key what the tables call it
 * @param told its names and what is said of it, by language; always in English
 * @param tested products that serve in its place; may be empty
 */
public record Untested(
    String key, Kind kind, Map<String, Told> told, List<String> tested, Source source) {
  private static final String ENGLISH = "en";
  private static final String ASK = "Ask your local extension service.";

  public Untested {
    told = Map.copyOf(told);
    tested = List.copyOf(tested);
    if (!told.containsKey(ENGLISH)) {
      throw new IllegalArgumentException("what is untested is told in English at least");
    }
  }

  /** What it is that has no tested process. */
  public enum Kind {
    FOOD,
    WAY,
    JAR
  }

  /**
   * @param names what people call it
   * @param what the thing itself, as {@code eggplant}
   * @param why it has none, in whole sentences
   * @param instead what to do, in whole sentences
   */
  public record Told(List<String> names, String what, String why, String instead) {
    public Told {
      names = List.copyOf(names);
      if (names.isEmpty() || what.isBlank() || why.isBlank() || instead.isBlank()) {
        throw new IllegalArgumentException("an untested way needs words, name, reason and remedy");
      }
    }
  }

  /** What is said of it in a language, or in English where that has no words. */
  public Told told(String language) {
    return told.getOrDefault(language, told.get(ENGLISH));
  }

  public String what() {
    return told(ENGLISH).what();
  }

  public String why() {
    return told(ENGLISH).why();
  }

  public String instead() {
    return told(ENGLISH).instead();
  }

  /** Whether people call it by just these words, in any language. */
  public boolean isCalled(String name) {
    List<String> asked = Spelling.words(name);
    return told.entrySet().stream()
        .anyMatch(t -> t.getValue().names().stream().anyMatch(n -> isSame(t.getKey(), n, asked)));
  }

  private static boolean isSame(String language, String name, List<String> asked) {
    return stems(language, Spelling.words(name)).equals(stems(language, asked));
  }

  private static List<String> stems(String language, List<String> words) {
    return words.stream().map(w -> Spelling.stem(language, w)).toList();
  }

  /** What can be done, what is tested, and where to ask, in English sentences. */
  public String remedy() {
    List<String> parts = new ArrayList<>(List.of(instead()));
    if (!tested.isEmpty()) {
      parts.add("Tested: " + String.join(", ", tested) + ".");
    }
    if (!instead().contains("extension")) {
      parts.add(ASK);
    }
    return String.join(" ", parts);
  }
}
