package jarwright.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A food or a way of canning that people ask for and that has no tested process.
 *
 * @param words what people call it, in small letters
 * @param what the thing itself
 * @param why it has none, one sentence or two
 * @param instead what can be done, in words, parted by semicolons
 * @param tested products that serve in its place; may be empty
 */
public record Untested(
    List<String> words,
    String what,
    String why,
    String instead,
    List<String> tested,
    Source source) {
  private static final String ASK = "ask your local extension service";

  public Untested {
    words = List.copyOf(words);
    tested = List.copyOf(tested);
    if (words.isEmpty() || what.isBlank() || why.isBlank() || instead.isBlank()) {
      throw new IllegalArgumentException("an untested way needs words, name, reason and remedy");
    }
  }

  /** Whether people call it by the given words; case and hyphens do not matter. */
  public boolean isCalled(String name) {
    return words.contains(
        name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " "));
  }

  /** What can be done, what is tested, and where to ask, as {@code freeze; tested: figs; ask …}. */
  public String remedy() {
    List<String> parts = new ArrayList<>(List.of(instead));
    if (!tested.isEmpty()) {
      parts.add("tested: " + String.join(", ", tested));
    }
    if (!instead.contains("extension")) {
      parts.add(ASK);
    }
    return String.join("; ", parts);
  }
}
