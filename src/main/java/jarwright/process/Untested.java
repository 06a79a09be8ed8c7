package jarwright.process;

import java.util.List;

/**
 * A food or a way of canning that people ask for and that has no tested process.
 *
 * @param words what people call it, in small letters
 * @param what the thing itself
 * @param why it has none, one sentence or two
 * @param instead what can be done, in words; may end with products that are tested
 */
public record Untested(List<String> words, String what, String why, String instead, Source source) {
  public Untested {
    words = List.copyOf(words);
    if (words.isEmpty() || what.isBlank() || why.isBlank() || instead.isBlank()) {
      throw new IllegalArgumentException("an untested way needs words, name, reason and remedy");
    }
  }

  /** Whether people call it by the given words; case and hyphens do not matter. */
  public boolean isCalled(String name) {
    return words.contains(
        name.strip().toLowerCase(java.util.Locale.ROOT).replaceAll("[\\s_-]+", " "));
  }
}
