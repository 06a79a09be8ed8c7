package jarwright.lot;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A batch's name: day of packing, a letter for that day's batch, and a check character, as in
 * {@code 260824A-T}.
 *
 * @param packed a date of this century
 * @param letter A to Z
 */
public record LotCode(LocalDate packed, char letter) implements Comparable<LotCode> {
  private static final Pattern FORM = Pattern.compile("(\\d{2})(\\d{2})(\\d{2})([A-Z])-([0-9A-Z])");
  private static final int CENTURY = 2000;
  private static final int YEARS = 100;
  private static final int LONGEST_SHOWN = 30;

  public LotCode {
    if (letter < 'A' || letter > 'Z') {
      throw new IllegalArgumentException("a day has batches A to Z, not " + letter);
    }
    if (packed.getYear() < CENTURY || packed.getYear() >= CENTURY + YEARS) {
      throw new IllegalArgumentException(
          "a lot is packed in the years 2000 to 2099, not " + packed);
    }
  }

  /**
   * Reads a code typed by hand: small letters and spaces around it are forgiven, nothing else.
   *
   * @throws MistypedCode when the form, the date or the check character is wrong
   */
  public static LotCode parse(String text) {
    String typed = text.strip().toUpperCase(Locale.ROOT);
    Matcher form = FORM.matcher(typed);
    if (!form.matches()) {
      throw new MistypedCode(
          "\""
              + shown(text)
              + "\" is mistyped: a lot looks like YYMMDD, a letter, -, a check character");
    }
    char check = form.group(5).charAt(0);
    if (!CheckCharacter.completes(typed.substring(0, typed.indexOf('-')), check)) {
      throw new MistypedCode(
          "\"" + shown(text) + "\" is mistyped: its check character does not fit");
    }
    try {
      LocalDate packed =
          LocalDate.of(
              CENTURY + Integer.parseInt(form.group(1)),
              Integer.parseInt(form.group(2)),
              Integer.parseInt(form.group(3)));
      return new LotCode(packed, form.group(4).charAt(0));
    } catch (DateTimeException e) {
      throw new MistypedCode("\"" + shown(text) + "\" is mistyped: it begins with no date");
    }
  }

  /** The name of that day's next batch, or none after Z. */
  public Optional<LotCode> next() {
    return letter == 'Z' ? Optional.empty() : Optional.of(new LotCode(packed, (char) (letter + 1)));
  }

  public JarId jar(int number) {
    return new JarId(this, number);
  }

  /** By hand, as {@link #hashCode}: lots are compared at every start, and by the million. */
  @Override
  public boolean equals(Object other) {
    return other instanceof LotCode that && letter == that.letter && packed.equals(that.packed);
  }

  @Override
  public int hashCode() {
    return packed.hashCode() * 31 + letter;
  }

  @Override
  public int compareTo(LotCode other) {
    int byDay = packed.compareTo(other.packed);
    return byDay != 0 ? byDay : Character.compare(letter, other.letter);
  }

  @Override
  public String toString() {
    String name =
        twoDigits(packed.getYear() - CENTURY)
            + twoDigits(packed.getMonthValue())
            + twoDigits(packed.getDayOfMonth())
            + letter;
    return name + "-" + CheckCharacter.of(name);
  }

  private static String twoDigits(int number) {
    return number < 10 ? "0" + number : String.valueOf(number);
  }

  /** What came in, cut to a length that a one-line message can hold. */
  static String shown(String text) {
    String oneLine = text.strip().replaceAll("\\p{Cntrl}+", " ");
    boolean fits = oneLine.codePointCount(0, oneLine.length()) <= LONGEST_SHOWN;
    return fits
        ? oneLine
        : oneLine.substring(0, oneLine.offsetByCodePoints(0, LONGEST_SHOWN)) + "…";
  }
}
