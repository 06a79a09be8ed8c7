package jarwright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A sentence whose amounts stand in braces, so that they can be written in any units: {@code Cut
 * {1/2 in} cubes}, {@code Dip {30..60 s}}. A name in braces, as {@code {liquid}}, is filled in when
 * the text is written.
 */
public final class MeasuredText {
  private static final Pattern BRACES = Pattern.compile("\\{([^{}]*)}");
  private static final Pattern NAME = Pattern.compile("[a-z][a-z-]*");
  private static final Pattern AMOUNT =
      Pattern.compile("([0-9][0-9/. -]*?)(?:\\.\\.([0-9][0-9/-]*))? ([A-Za-z-]+)");
  private static final String MILLIGRAMS = "mg";

  private final String source;
  private final List<Part> parts;

  private MeasuredText(String source, List<Part> parts) {
    this.source = source;
    this.parts = List.copyOf(parts);
  }

  /** A piece of the text. */
  private interface Part {
    String text(Style style, Map<String, String> names);

    default boolean isAmount() {
      return true;
    }

    default Optional<TimeSpan> time() {
      return Optional.empty();
    }

    default Optional<String> name() {
      return Optional.empty();
    }
  }

  /**
   * A run of the written text.
   *
   * @param amount whether it was written from braces, so that it may be set to catch the eye
   */
  public record Run(String text, boolean amount) {}

  private record Words(String words) implements Part {
    @Override
    public String text(Style style, Map<String, String> names) {
      return words;
    }

    @Override
    public boolean isAmount() {
      return false;
    }
  }

  private record Named(String key) implements Part {
    @Override
    public String text(Style style, Map<String, String> names) {
      String value = names.get(key);
      if (value == null) {
        throw new IllegalArgumentException("nothing is known for {" + key + "}");
      }
      return value;
    }

    @Override
    public Optional<String> name() {
      return Optional.of(key);
    }
  }

  private record Time(TimeSpan span) implements Part {
    @Override
    public String text(Style style, Map<String, String> names) {
      return span.text(style);
    }

    @Override
    public Optional<TimeSpan> time() {
      return Optional.of(span);
    }
  }

  /** A mass too small for kitchen measures, printed as it stands. */
  private record Milligrams(Fraction amount) implements Part {
    Milligrams {
      if (!amount.isWhole()) {
        throw new IllegalArgumentException("milligrams are whole, not " + amount);
      }
    }

    @Override
    public String text(Style style, Map<String, String> names) {
      return style.decimal(amount, MILLIGRAMS);
    }
  }

  private record Measure(AmountRange range) implements Part {
    @Override
    public String text(Style style, Map<String, String> names) {
      return range.text(style);
    }
  }

  /**
   * Reads a text with its braces.
   *
   * @throws IllegalArgumentException naming the braces that hold no amount or name
   */
  public static MeasuredText parse(String text) {
    List<Part> parts = new ArrayList<>();
    Matcher braces = BRACES.matcher(text);
    int from = 0;
    while (braces.find()) {
      parts.add(words(text, from, braces.start()));
      parts.add(part(braces.group(1)));
      from = braces.end();
    }
    parts.add(words(text, from, text.length()));
    return new MeasuredText(text, parts);
  }

  private static Words words(String text, int from, int to) {
    String words = text.substring(from, to);
    if (words.indexOf('{') >= 0 || words.indexOf('}') >= 0) {
      throw new IllegalArgumentException("a brace has no partner in \"" + Shown.of(text) + "\"");
    }
    return new Words(words);
  }

  private static Part part(String inside) {
    if (NAME.matcher(inside).matches()) {
      return new Named(inside);
    }
    Matcher amount = AMOUNT.matcher(inside);
    if (!amount.matches()) {
      throw new IllegalArgumentException(
          "{" + Shown.of(inside) + "} is neither an amount nor a name");
    }
    Fraction low = Fraction.parse(amount.group(1));
    Fraction high = amount.group(2) == null ? low : Fraction.parse(amount.group(2));
    String unit = amount.group(3);
    if (unit.equals(MILLIGRAMS) && amount.group(2) == null) {
      return new Milligrams(low);
    }
    for (TimeSpan.Unit time : TimeSpan.Unit.values()) {
      if (time.spellings().contains(unit)) {
        return new Time(new TimeSpan(low, high, time));
      }
    }
    return new Measure(AmountRange.of(low, high, unit));
  }

  /** The names that {@link #text} must be given. */
  public List<String> names() {
    return parts.stream().map(Part::name).flatMap(Optional::stream).distinct().toList();
  }

  /** The stretches of time written in the text, in order. */
  public List<TimeSpan> times() {
    return parts.stream().map(Part::time).flatMap(Optional::stream).toList();
  }

  /** The text as printed. */
  public String text(Style style, Map<String, String> names) {
    return runs(style, names).stream().map(Run::text).collect(Collectors.joining());
  }

  /** The text as printed, its amounts apart from its words; joined they are {@link #text}. */
  public List<Run> runs(Style style, Map<String, String> names) {
    return parts.stream()
        .map(p -> new Run(p.text(style, names), p.isAmount()))
        .filter(r -> !r.text().isEmpty())
        .toList();
  }

  /** With its braces, as {@link #parse} reads it. */
  @Override
  public String toString() {
    return source;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof MeasuredText text && text.source.equals(source);
  }

  @Override
  public int hashCode() {
    return source.hashCode();
  }
}
