package jarwright.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of the print-outs in one language: key to text with {@code {named}} placeholders. How
 * numbers and dates look is part of the words, so print-outs do not change with the Java release.
 */
public final class Wording {
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-zA-Z][a-zA-Z0-9]*)}");

  private final Locale locale;
  private final Map<String, String> texts;

  private Wording(Locale locale, Map<String, String> texts) {
    this.locale = locale;
    this.texts = texts;
  }

  /** The words of {@code texts} in the language of {@code locale}. */
  public static Wording of(Locale locale, Map<String, String> texts) {
    return new Wording(Objects.requireNonNull(locale), new LinkedHashMap<>(texts));
  }

  /** The language tag (BCP 47) of these words, as {@code en} or {@code es}. */
  public String language() {
    return locale.toLanguageTag();
  }

  /** The locale of these words. */
  public Locale locale() {
    return locale;
  }

  /** Every key, sorted. */
  public Set<String> keys() {
    return new TreeSet<>(texts.keySet());
  }

  /** Whether there is a text of that key. */
  public boolean has(String key) {
    return texts.containsKey(key);
  }

  /**
   * The text of a key that has no placeholders.
   *
   * @throws IllegalArgumentException if there is no such key, or it has placeholders
   */
  public String text(String key) {
    return text(key, Map.of());
  }

  /**
   * The text of a key, its placeholders filled.
   *
   * @throws IllegalArgumentException if there is no such key, a placeholder has no value, or a
   *     value has no placeholder
   */
  public String text(String key, Map<String, ?> values) {
    String pattern = texts.get(key);
    if (pattern == null) {
      throw new IllegalArgumentException("no text \"" + key + "\" in language " + language());
    }
    Set<String> unused = new TreeSet<>(values.keySet());
    StringBuilder out = new StringBuilder();
    Matcher matcher = PLACEHOLDER.matcher(pattern);
    while (matcher.find()) {
      Object value = values.get(matcher.group(1));
      if (value == null) {
        throw new IllegalArgumentException(
            "text \"" + key + "\" wants a value for {" + matcher.group(1) + "}");
      }
      unused.remove(matcher.group(1));
      matcher.appendReplacement(out, Matcher.quoteReplacement(shown(value)));
    }
    if (!unused.isEmpty()) {
      throw new IllegalArgumentException(
          "text \"" + key + "\" has no placeholder {" + String.join("}, {", unused) + "}");
    }
    return matcher.appendTail(out).toString();
  }

  /**
   * The text for a number of things: key + {@code .one} for exactly one, else key + {@code .other};
   * {@code {n}} stands for the number.
   */
  public String count(String key, long n) {
    String form = key + (n == 1 ? ".one" : ".other");
    String pattern = texts.getOrDefault(form, "");
    return text(form, pattern.contains("{n}") ? Map.of("n", number(n)) : Map.of());
  }

  /** A whole number with the language's thousands sign. */
  public String number(long n) {
    return number(BigDecimal.valueOf(n));
  }

  /** A decimal number with all its digits and the language's decimal and thousands signs. */
  public String number(BigDecimal n) {
    String plain = n.abs().toPlainString();
    int point = plain.indexOf('.');
    String whole = point < 0 ? plain : plain.substring(0, point);
    StringBuilder out = new StringBuilder(n.signum() < 0 ? "-" : "");
    for (int i = 0; i < whole.length(); i++) {
      if (i > 0 && (whole.length() - i) % 3 == 0) {
        out.append(text("number.thousands"));
      }
      out.append(whole.charAt(i));
    }
    if (point >= 0) {
      out.append(text("number.decimal")).append(plain, point + 1, plain.length());
    }
    return out.toString();
  }

  /**
   * A date in the words' own style.
   *
   * @param style the end of a {@code date.…} key, whose text may hold {@code {year}}, {@code
   *     {month}} (name), {@code {mon}} (short name), {@code {mm}}, {@code {dd}}, {@code {day}},
   *     {@code {weekday}}
   */
  public String date(String style, LocalDate date) {
    String key = "date." + style;
    String pattern = texts.getOrDefault(key, "");
    Map<String, Object> values = new LinkedHashMap<>();
    int month = date.getMonthValue();
    putIfUsed(values, pattern, "year", String.format(Locale.ROOT, "%04d", date.getYear()));
    putIfUsed(values, pattern, "month", texts.get("month." + month));
    putIfUsed(values, pattern, "mon", texts.get("month.short." + month));
    putIfUsed(values, pattern, "mm", String.format(Locale.ROOT, "%02d", month));
    putIfUsed(values, pattern, "dd", String.format(Locale.ROOT, "%02d", date.getDayOfMonth()));
    putIfUsed(values, pattern, "day", String.valueOf(date.getDayOfMonth()));
    String weekday = String.valueOf(date.getDayOfWeek().getValue());
    putIfUsed(values, pattern, "weekday", texts.get("weekday." + weekday));
    return text(key, values);
  }

  private static void putIfUsed(
      Map<String, Object> values, String pattern, String name, String value) {
    if (value != null && pattern.contains("{" + name + "}")) {
      values.put(name, value);
    }
  }

  private String shown(Object value) {
    if (value instanceof BigDecimal n) {
      return number(n);
    }
    if (value instanceof Integer || value instanceof Long) {
      return number(((Number) value).longValue());
    }
    if (value instanceof String text) {
      return text;
    }
    throw new IllegalArgumentException(
        "a placeholder takes a text, a whole or a decimal number, not " + value.getClass());
  }
}
