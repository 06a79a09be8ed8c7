package jarwright.cli;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import jarwright.pantry.Jar;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Jars as they are named on a command line: {@code 260824A-T/03}, {@code 260824A-T/1..4,7}, {@code
 * 260824A-T/all}; and words that are no code, such as {@code tomatoes pint}.
 *
 * @param codes by lot; empty numbers stand for all jars of it
 * @param words all other arguments, as one name
 */
record NamedJars(Map<LotCode, Optional<JarNumbers>> codes, String words) {
  private static final Pattern CODE_LIKE = Pattern.compile("[0-9].*|.*/.*");
  private static final String ALL = "all";
  private static final String FORM =
      "copy it from the label, as 260824A-T/03; or /1..4,7 for some and /all for all of a lot";

  /**
   * Reads arguments. What begins with a digit or has a slash is meant as a code.
   *
   * @throws Refused with every code that is mistyped
   */
  static NamedJars of(List<String> arguments) throws Refused {
    Map<LotCode, Optional<JarNumbers>> codes = new LinkedHashMap<>();
    List<String> words = new ArrayList<>();
    Problems problems = new Problems();
    for (String argument : arguments) {
      if (!CODE_LIKE.matcher(argument.strip()).matches()) {
        words.add(argument.strip());
        continue;
      }
      try {
        add(codes, argument.strip(), problems);
      } catch (IllegalArgumentException e) {
        problems.add(Place.wholeFile(shown(argument)), e.getMessage(), FORM);
      }
    }
    problems.refuse();
    return new NamedJars(codes, String.join(" ", words).strip());
  }

  private static void add(
      Map<LotCode, Optional<JarNumbers>> codes, String code, Problems problems) {
    int slash = code.indexOf('/');
    LotCode lot = LotCode.parse(slash < 0 ? code : code.substring(0, slash));
    String which = slash < 0 ? "" : code.substring(slash + 1).strip();
    if (which.equalsIgnoreCase(ALL)) {
      codes.put(lot, Optional.empty());
      return;
    }
    JarNumbers numbers = JarNumbers.parse(which);
    if (numbers.isEmpty()) {
      problems.add(Place.wholeFile(shown(code)), "this names no jar", FORM);
      return;
    }
    Optional<JarNumbers> before = codes.getOrDefault(lot, Optional.of(JarNumbers.NONE));
    codes.put(lot, before.map(numbers::plus));
  }

  static String shown(String argument) {
    String line = argument.strip().replaceAll("\\p{Cntrl}+", " ");
    return line.length() <= 40 ? line : line.substring(0, 40) + "…";
  }

  boolean isEmpty() {
    return codes.isEmpty() && words.isEmpty();
  }

  /**
   * The jars that are named by codes, each once.
   *
   * @param ofAll which jars are meant where all of a lot are
   * @throws Refused with every lot and jar that the ledger does not have
   */
  List<Jar> in(Pantry pantry, Predicate<Jar> ofAll) throws Refused {
    List<Jar> jars = new ArrayList<>();
    Problems problems = new Problems();
    codes.forEach(
        (code, numbers) -> {
          Optional<Lot> lot = pantry.lot(code);
          if (lot.isEmpty()) {
            problems.addAll(List.of(Books.unknown(pantry, code)));
          } else if (numbers.isEmpty()) {
            all(lot.get(), ofAll, jars, problems);
          } else {
            some(lot.get(), numbers.get(), jars, problems);
          }
        });
    problems.refuse();
    return jars;
  }

  private static void all(Lot lot, Predicate<Jar> meant, List<Jar> jars, Problems problems) {
    List<Jar> found = lot.jars().stream().filter(meant).toList();
    if (found.isEmpty()) {
      problems.add(
          Place.wholeFile(lot.code() + "/" + ALL),
          "no jar of this lot is in the house for it",
          "jarwright trace " + lot.code() + " shows where they went");
    }
    jars.addAll(found);
  }

  private static void some(Lot lot, JarNumbers numbers, List<Jar> jars, Problems problems) {
    JarNumbers known = JarNumbers.of(lot.byNumber().keySet());
    numbers.in(known).stream().forEach(n -> jars.add(lot.byNumber().get(n)));
    JarNumbers strange = numbers.minus(known);
    if (!strange.isEmpty()) {
      problems.add(
          Place.wholeFile(lot.code() + "/" + typed(strange)),
          "the lot has no such jar",
          "it has " + known);
    }
  }

  /** Jars as they can be typed again: {@code 260824A-T/01..04,07}. */
  static String shown(List<JarId> jars) {
    Map<LotCode, List<Integer>> byLot = new LinkedHashMap<>();
    jars.forEach(j -> byLot.computeIfAbsent(j.lot(), l -> new ArrayList<>()).add(j.number()));
    List<String> lots = new ArrayList<>();
    byLot.forEach((lot, numbers) -> lots.add(lot + "/" + typed(JarNumbers.of(numbers))));
    return String.join(" ", lots);
  }

  private static String typed(JarNumbers numbers) {
    return numbers.toString().replace(' ', ',');
  }
}
