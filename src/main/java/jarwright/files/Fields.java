package jarwright.files;

import jarwright.problem.Nearest;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.quantity.UnclearAmount;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The values of one piece of a plan, by key. A value that cannot be understood is told as a problem
 * and read as if it were not there.
 */
final class Fields {
  private static final int LONGEST = OneLine.LONGEST;
  private static final int LONGEST_SHOWN = 40;
  private static final Pattern NUMBER_ALONE = Pattern.compile("-?[0-9][0-9.,/ -]*");
  private static final List<String> YES = List.of("yes", "y", "true", "on", "sí", "si", "s");
  private static final List<String> NO = List.of("no", "n", "false", "off");

  private final Written.Keys keys;
  private final Problems problems;

  /**
   * @param what the piece, for messages, as {@code a batch}
   * @param known the keys it may have
   * @param elsewhere remedies for keys that belong to another piece
   */
  Fields(
      Written.Keys keys,
      String what,
      List<String> known,
      Map<String, String> elsewhere,
      Problems problems) {
    this.keys = keys;
    this.problems = problems;
    keys.entries()
        .forEach(
            (key, entry) -> {
              if (!known.contains(key) && !problems.isFull()) {
                problems.add(
                    entry.place(),
                    what + " has no key \"" + shown(key) + "\"",
                    elsewhere.getOrDefault(key, Nearest.remedy(key, known)));
              }
            });
  }

  Place place() {
    return keys.place();
  }

  boolean has(String key) {
    return keys.entries().containsKey(key);
  }

  Optional<Written> written(String key) {
    return Optional.ofNullable(keys.entries().get(key)).map(Written.Entry::value);
  }

  /** Where each key's value stands; under {@code ""} the piece itself. */
  Map<String, Place> places() {
    Map<String, Place> places = new LinkedHashMap<>();
    places.put("", keys.place());
    keys.entries().forEach((key, entry) -> places.put(key, entry.value().place()));
    return places;
  }

  /** Tells a key that has to be there and is not. */
  void require(String key, String remedy) {
    if (!has(key)) {
      problems.add(place(), key + ": is missing", remedy);
    }
  }

  /** Tells that the whole piece cannot be right, where nothing else has been told. */
  void damaged(String what) {
    if (problems.isEmpty()) {
      problems.add(place(), what, "");
    }
  }

  void problem(String key, String what, String remedy) {
    Place where = written(key).map(Written::place).orElse(place());
    problems.add(where, key + ": " + what, remedy);
  }

  private Optional<Written.Text> value(String key) {
    Optional<Written> written = written(key);
    if (written.isEmpty()) {
      return Optional.empty();
    }
    if (!(written.get() instanceof Written.Text text)) {
      problem(key, "takes one value, not " + written.get().kind(), "write " + key + ": value");
      return Optional.empty();
    }
    if (text.text().isBlank()) {
      problems.add(
          keys.entries().get(key).place(), key + ": has no value", "add one, or leave the key out");
      return Optional.empty();
    }
    if (text.text().length() > LONGEST) {
      problem(key, "the value is too long", "write " + LONGEST + " characters or fewer");
      return Optional.empty();
    }
    return Optional.of(text);
  }

  /** Free text in one line. */
  Optional<String> text(String key) {
    Optional<String> line = value(key).map(t -> OneLine.of(t.text()));
    if (line.isPresent() && !OneLine.isPrintable(line.get())) {
      problem(key, "holds a character that cannot be printed", "write plain text");
      return Optional.empty();
    }
    return line;
  }

  /** A word in the form that fixed words are compared in: small, single hyphens for gaps. */
  static String plain(String word) {
    return word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
  }

  /** The value as written, short enough for a message; empty where there is none. */
  String said(String key) {
    return value(key).map(t -> shown(t.text())).orElse("");
  }

  Optional<String> plainWord(String key) {
    return value(key).map(t -> plain(t.text()));
  }

  /** One of the known words; case, and hyphens for spaces, are forgiven. */
  <T> Optional<T> word(String key, Function<String, Optional<T>> named, List<String> known) {
    return value(key)
        .flatMap(
            text -> {
              Optional<T> found =
                  known.stream()
                      .filter(k -> plain(k).equals(plain(text.text())))
                      .findFirst()
                      .flatMap(named);
              if (found.isEmpty()) {
                problem(
                    key,
                    "\"" + shown(text.text()) + "\" is not known",
                    Nearest.remedy(text.text(), known));
              }
              return found;
            });
  }

  /**
   * An amount with its unit.
   *
   * @param parse throws IllegalArgumentException with a plain sentence
   * @param example a right value, as {@code 420 m}
   */
  <T> Optional<T> amount(String key, Function<String, T> parse, String example) {
    return value(key)
        .flatMap(
            text -> {
              try {
                String number =
                    text.decimalComma() ? DecimalComma.toPoint(text.text()) : text.text();
                return Optional.of(parse.apply(number));
              } catch (UnclearAmount e) {
                problem(key, "\"" + shown(text.text()) + "\" " + e.fault(), e.remedy());
                return Optional.empty();
              } catch (IllegalArgumentException e) {
                boolean alone = NUMBER_ALONE.matcher(text.text().strip()).matches();
                String remedy = (alone ? "add the unit, as in " : "write it like ") + example;
                problem(key, e.getMessage(), remedy);
                return Optional.empty();
              }
            });
  }

  /** What a program wrote, read back. */
  <T> Optional<T> parsed(String key, Function<String, T> parse) {
    return amount(key, parse, "what stood there before");
  }

  /** Every value of a list; none where the key is not there. */
  <T> List<T> list(String key, Function<String, T> parse, String example) {
    List<T> values = new ArrayList<>();
    Optional<Written> written = written(key);
    if (written.isPresent() && !(written.get() instanceof Written.Items)) {
      problem(key, "takes a list", "write " + key + ": [" + example + "]");
    }
    if (written.isPresent() && written.get() instanceof Written.Items list) {
      for (Written item : list.items()) {
        Written.Entry entry = new Written.Entry(item.place(), item);
        Written.Keys one = new Written.Keys(item.place(), Map.of(key, entry));
        new Fields(one, "", List.of(key), Map.of(), problems)
            .amount(key, parse, example)
            .ifPresent(values::add);
      }
    }
    return values;
  }

  /** A whole number within bounds, which are both allowed. */
  OptionalInt count(String key, int least, int most) {
    Optional<Written.Text> text = value(key);
    if (text.isEmpty()) {
      return OptionalInt.empty();
    }
    String digits = text.get().text().strip();
    int number = digits.matches("\\d{1,9}") ? Integer.parseInt(digits) : -1;
    if (number < least || number > most) {
      problem(
          key,
          "takes a whole number from " + least + " to " + most + ", not \"" + shown(digits) + "\"",
          "");
      return OptionalInt.empty();
    }
    return OptionalInt.of(number);
  }

  /** Whether a yes or a no stands there; empty where neither does. */
  Optional<Boolean> yesOrNo(String key) {
    Optional<String> word = plainWord(key);
    if (word.isPresent() && !YES.contains(word.get()) && !NO.contains(word.get())) {
      problem(key, "\"" + said(key) + "\" is neither yes nor no", "write yes or no");
    }
    return word.filter(w -> YES.contains(w) || NO.contains(w)).map(YES::contains);
  }

  /** What came in, short enough for a message of one line. */
  static String shown(String text) {
    String line = text.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
    return line.codePointCount(0, line.length()) <= LONGEST_SHOWN
        ? line
        : line.substring(0, line.offsetByCodePoints(0, LONGEST_SHOWN)) + "…";
  }
}
