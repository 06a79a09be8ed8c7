package jarwright.pantry;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What went otherwise than the sheet says, or was seen when the seals were tested.
 *
 * @param jars of which it is said; none where it is said of the whole load
 */
public record Departures(SortedMap<Otherwise, JarNumbers> jars) {
  public static final Departures NONE = new Departures(new TreeMap<>());

  private static final Pattern WORD = Pattern.compile("[a-z]++(?:-[a-z]++)*+");
  private static final String SEPARATORS = ",;:= \t";
  private static final Set<String> NOTHING = Set.of("", "none", "no", "-");

  public Departures {
    jars = Collections.unmodifiableSortedMap(new TreeMap<>(jars));
  }

  /**
   * Reads words, each followed by the jars that it is said of where it is not said of all: {@code
   * forced-cooling, larger-jar 3 5..7}; or {@code none}.
   *
   * @throws IllegalArgumentException naming what cannot be read
   */
  public static Departures parse(String text) {
    String list = text.strip().toLowerCase(Locale.ROOT);
    if (NOTHING.contains(list)) {
      return NONE;
    }
    Map<Otherwise, JarNumbers> jars = new TreeMap<>();
    Matcher word = WORD.matcher(list);
    boolean found = word.find();
    if (!found || !numbers(list.substring(0, word.start())).isEmpty()) {
      throw new IllegalArgumentException(
          "\"" + Shown.of(text) + "\" names jars before it says what was otherwise with them");
    }
    while (found) {
      Otherwise what = Otherwise.parse(word.group());
      int from = word.end();
      found = word.find();
      String of = numbers(list.substring(from, found ? word.start() : list.length()));
      if (jars.put(what, checked(what, of)) != null) {
        throw new IllegalArgumentException("\"" + what.word() + "\" comes twice");
      }
    }
    return new Departures(new TreeMap<>(jars));
  }

  /** What stands between two words, without what parts it from them. */
  private static String numbers(String between) {
    int from = 0;
    int to = between.length();
    while (from < to && SEPARATORS.indexOf(between.charAt(from)) >= 0) {
      from++;
    }
    while (from < to && SEPARATORS.indexOf(between.charAt(to - 1)) >= 0) {
      to--;
    }
    return between.substring(from, to);
  }

  private static JarNumbers checked(Otherwise what, String of) {
    JarNumbers jars = JarNumbers.parse(of);
    if (what.isSign() && jars.isEmpty()) {
      throw new IllegalArgumentException(
          "\"" + what.word() + "\" needs the jars' numbers after it, as in " + what.word() + " 3");
    }
    if (!what.isOfJars() && !jars.isEmpty()) {
      throw new IllegalArgumentException(
          "\"" + what.word() + "\" is said of the whole load, not of jars " + jars);
    }
    return jars;
  }

  /** Of one jar. */
  public Set<Otherwise> of(int jar) {
    Set<Otherwise> all = EnumSet.noneOf(Otherwise.class);
    jars.forEach(
        (what, said) -> {
          if (said.isEmpty() || said.contains(jar)) {
            all.add(what);
          }
        });
    return all;
  }

  /** What is said of all jars of the load. */
  Set<Otherwise> ofAll() {
    Set<Otherwise> all = EnumSet.noneOf(Otherwise.class);
    jars.forEach(
        (what, said) -> {
          if (said.isEmpty()) {
            all.add(what);
          }
        });
    return all;
  }

  /** Those that are seen when seals are tested, or the others. */
  public Departures signs(boolean signs) {
    TreeMap<Otherwise, JarNumbers> some = new TreeMap<>(jars);
    some.keySet().removeIf(what -> what.isSign() != signs);
    return new Departures(some);
  }

  /** The same said of fewer jars; what is said of none of them is left out. */
  public Departures ofJars(UnaryOperator<JarNumbers> fewer) {
    TreeMap<Otherwise, JarNumbers> some = new TreeMap<>();
    jars.forEach(
        (what, said) -> {
          JarNumbers left = fewer.apply(said);
          if (said.isEmpty() || !left.isEmpty()) {
            some.put(what, left);
          }
        });
    return new Departures(some);
  }

  /** Both; what one says of all jars is said of all. */
  Departures plus(Departures other) {
    TreeMap<Otherwise, JarNumbers> both = new TreeMap<>(jars);
    other.jars.forEach(
        (what, said) ->
            both.merge(
                what, said, (a, b) -> a.isEmpty() || b.isEmpty() ? JarNumbers.NONE : a.plus(b)));
    return new Departures(both);
  }

  /** Whether all of the other is said here, just so. */
  boolean holds(Departures other) {
    return jars.entrySet().containsAll(other.jars.entrySet());
  }

  public boolean isEmpty() {
    return jars.isEmpty();
  }

  /** The jars that are named. */
  JarNumbers named() {
    return jars.values().stream().reduce(JarNumbers.NONE, JarNumbers::plus);
  }

  /** As {@link #parse} reads it; empty for none. */
  @Override
  public String toString() {
    return jars.entrySet().stream()
        .map(e -> (e.getKey().word() + " " + e.getValue()).strip())
        .collect(Collectors.joining(", "));
  }
}
