package jarwright.pantry;

import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Numbers of jars of one lot, each once and in order, as in {@code 01..07 09}.
 *
 * <p>Runs are written with two dots: a spreadsheet would take {@code 01-07} for a date.
 */
public final class JarNumbers {
  public static final JarNumbers NONE = new JarNumbers(new BitSet());

  static final int HIGHEST = 99_999;

  private static final int LONGEST_NUMBER = 6;
  private static final Pattern BETWEEN = Pattern.compile("[\\s,;+&]+");
  private static final Pattern RUN =
      Pattern.compile("(\\d{1,6})(?:\\s*(?:\\.\\.|-|\u2013)\\s*(\\d{1,6}))?");
  private static final Pattern RUN_MARK = Pattern.compile("\\s*(\\.\\.|-|\u2013)\\s*");
  private static final List<String> NO_JARS = List.of("", "none", "no", "-", "0");

  private final BitSet numbers;

  private JarNumbers(BitSet numbers) {
    this.numbers = numbers;
  }

  public static JarNumbers of(int... numbers) {
    BitSet bits = new BitSet();
    for (int number : numbers) {
      bits.set(checked(number));
    }
    return new JarNumbers(bits);
  }

  public static JarNumbers of(Collection<Integer> numbers) {
    return of(numbers.stream().mapToInt(Integer::intValue).toArray());
  }

  /** All numbers from the first to the last, both included; none where last is below first. */
  public static JarNumbers range(int first, int last) {
    BitSet bits = new BitSet();
    if (last >= first) {
      bits.set(checked(first), checked(last) + 1);
    }
    return new JarNumbers(bits);
  }

  /**
   * Reads {@code 1-7, 9}, {@code 01..07 09} or {@code none}.
   *
   * @throws IllegalArgumentException naming the text when it is no such list
   */
  public static JarNumbers parse(String text) {
    String list = text.strip();
    if (NO_JARS.contains(list.toLowerCase(Locale.ROOT))) {
      return NONE;
    }
    if (isOneNumber(list)) {
      return of(Integer.parseInt(list));
    }
    BitSet bits = new BitSet();
    for (String part : BETWEEN.split(RUN_MARK.matcher(list).replaceAll("$1"), -1)) {
      Matcher run = RUN.matcher(part);
      if (!run.matches()) {
        throw new IllegalArgumentException(
            "\"" + Shown.of(text) + "\" is no list of jar numbers like 1-7, 9 or none");
      }
      int first = checked(Integer.parseInt(run.group(1)));
      int last = run.group(2) == null ? first : checked(Integer.parseInt(run.group(2)));
      if (last < first) {
        throw new IllegalArgumentException("jar numbers run upwards, not " + Shown.of(part));
      }
      bits.set(first, last + 1);
    }
    return new JarNumbers(bits);
  }

  /** Most events are of one jar; a large ledger has very many of them. */
  private static boolean isOneNumber(String list) {
    for (int i = 0; i < list.length(); i++) {
      if (list.charAt(i) < '0' || list.charAt(i) > '9') {
        return false;
      }
    }
    return list.length() <= LONGEST_NUMBER;
  }

  private static int checked(int number) {
    if (number < 1 || number > HIGHEST) {
      throw new IllegalArgumentException(
          "jars are numbered from 1 to " + HIGHEST + ", not " + number);
    }
    return number;
  }

  public boolean isEmpty() {
    return numbers.isEmpty();
  }

  public int size() {
    return numbers.cardinality();
  }

  public boolean contains(int number) {
    return number >= 0 && numbers.get(number);
  }

  public JarNumbers plus(JarNumbers others) {
    BitSet bits = copy();
    bits.or(others.numbers);
    return new JarNumbers(bits);
  }

  public JarNumbers minus(JarNumbers others) {
    BitSet bits = copy();
    bits.andNot(others.numbers);
    return new JarNumbers(bits);
  }

  /** The numbers that are in both. */
  public JarNumbers in(JarNumbers others) {
    BitSet bits = copy();
    bits.and(others.numbers);
    return new JarNumbers(bits);
  }

  private BitSet copy() {
    BitSet bits = new BitSet();
    bits.or(numbers);
    return bits;
  }

  /** In rising order. */
  public IntStream stream() {
    return numbers.stream();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof JarNumbers that && numbers.equals(that.numbers);
  }

  @Override
  public int hashCode() {
    return numbers.hashCode();
  }

  /** Two digits or more each, which {@link #parse} reads back; empty for none. */
  @Override
  public String toString() {
    StringBuilder out = new StringBuilder();
    for (int first = numbers.nextSetBit(0); first >= 0; ) {
      int end = numbers.nextClearBit(first);
      out.append(out.isEmpty() ? "" : " ").append(digits(first));
      if (end - first > 2) {
        out.append("..").append(digits(end - 1));
      } else if (end - first == 2) {
        out.append(' ').append(digits(end - 1));
      }
      first = numbers.nextSetBit(end);
    }
    return out.toString();
  }

  private static String digits(int number) {
    return number < 10 ? "0" + number : Integer.toString(number);
  }
}
