package jarwright.record;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a jar's page says first and in large words.
 *
 * @param words a few, as {@code Good until August 24, 2027}
 * @param detail one or two sentences; may be empty
 */
public record Headline(Tone tone, String words, String detail) {
  /** As templates show it: {@code tone}, {@code words}, {@code detail}. */
  public Map<String, Object> view() {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("tone", tone.word());
    view.put("words", words);
    view.put("detail", detail);
    return view;
  }
}
