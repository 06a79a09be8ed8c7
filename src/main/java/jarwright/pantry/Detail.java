package jarwright.pantry;

import java.time.DateTimeException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * An event's particulars as text: {@code verdict=refrigerate | until=2026-08-27}. A bar within a
 * value is doubled; values are otherwise free, and empty ones are left out.
 */
public final class Detail {
  public static final Detail NONE = new Detail(new LinkedHashMap<>());

  private static final String BETWEEN = " | ";

  private final Map<String, String> values;

  private Detail(Map<String, String> values) {
    this.values = values;
  }

  public static Detail of(String key, Object value) {
    return NONE.with(key, value);
  }

  /** The same with one more value; an empty text or optional adds nothing. */
  public Detail with(String key, Object value) {
    if (!isKey(key)) {
      throw new IllegalArgumentException("\"" + key + "\" cannot be the name of a detail");
    }
    Object plain = value instanceof Optional<?> maybe ? maybe.orElse(null) : value;
    if (plain == null || plain.toString().isEmpty()) {
      return this;
    }
    Map<String, String> more = new LinkedHashMap<>(values);
    if (more.put(key, plain.toString()) != null) {
      throw new IllegalArgumentException("the detail \"" + key + "\" is given twice");
    }
    return new Detail(more);
  }

  /**
   * Reads what {@link #toString} writes.
   *
   * @throws IllegalArgumentException naming the part that has no key or comes twice
   */
  public static Detail parse(String text) {
    Map<String, String> values = new LinkedHashMap<>();
    StringBuilder part = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c != '|') {
        part.append(c);
      } else if (i + 1 < text.length() && text.charAt(i + 1) == '|') {
        part.append(c);
        i++;
      } else {
        if (part.isEmpty() || !text.startsWith(BETWEEN, i - 1)) {
          throw new IllegalArgumentException("a bar stands alone in \"" + Shown.of(text) + "\"");
        }
        take(part.substring(0, part.length() - 1), values);
        part.setLength(0);
        i++;
      }
    }
    if (!text.isEmpty()) {
      take(part.toString(), values);
    }
    return new Detail(values);
  }

  private static void take(String entry, Map<String, String> values) {
    int equals = entry.indexOf('=');
    if (equals < 0 || !isKey(entry.substring(0, equals))) {
      throw new IllegalArgumentException(
          "\"" + Shown.of(entry) + "\" is no detail like place=cellar");
    }
    if (values.put(entry.substring(0, equals), entry.substring(equals + 1)) != null) {
      throw new IllegalArgumentException("the detail \"" + Shown.of(entry) + "\" comes twice");
    }
  }

  /** Small letters, and hyphens between and after them. */
  private static boolean isKey(String key) {
    for (int i = 0; i < key.length(); i++) {
      char c = key.charAt(i);
      if ((c < 'a' || c > 'z') && (c != '-' || i == 0)) {
        return false;
      }
    }
    return !key.isEmpty();
  }

  /** The value, or empty text where the key is not there. */
  public String text(String key) {
    return values.getOrDefault(key, "");
  }

  /**
   * The value read by the given parser; empty where the key is not there.
   *
   * @throws IllegalArgumentException naming key and value where the parser cannot read it
   */
  public <T> Optional<T> maybe(String key, Function<String, T> parser) {
    String value = values.get(key);
    if (value == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(parser.apply(value));
    } catch (IllegalArgumentException | DateTimeException e) {
      throw new IllegalArgumentException(
          "the detail " + key + "=" + Shown.of(value) + " cannot be read: " + e.getMessage(), e);
    }
  }

  /**
   * The value read by the given parser.
   *
   * @throws IllegalArgumentException where the key is not there or cannot be read
   */
  public <T> T need(String key, Function<String, T> parser) {
    return maybe(key, parser)
        .orElseThrow(() -> new IllegalArgumentException("the detail " + key + "= is missing"));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Detail that && values.equals(that.values);
  }

  @Override
  public int hashCode() {
    return values.hashCode();
  }

  @Override
  public String toString() {
    StringBuilder out = new StringBuilder();
    values.forEach(
        (key, value) ->
            out.append(out.isEmpty() ? "" : BETWEEN)
                .append(key)
                .append('=')
                .append(value.replace("|", "||")));
    return out.toString();
  }
}
