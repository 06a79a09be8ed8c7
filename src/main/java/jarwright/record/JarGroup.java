package jarwright.record;

import jarwright.pantry.Jar;
import jarwright.pantry.Lot;
import jarwright.pantry.LotFacts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Jars of one lot that stand in the same place and of which the same is to be said.
 *
 * @param jars at least one, by number
 * @param place the shelf, or the word for another place
 */
record JarGroup(Lot lot, List<Jar> jars, Headline headline, String place) {
  private record Alike(Headline headline, String place) {}

  LotFacts facts() {
    return lot.facts();
  }

  /** The jars of a lot that fit, in groups, the most urgent first. */
  static List<JarGroup> of(
      Lot lot, Predicate<Jar> wanted, Headlines headlines, Function<Jar, String> place) {
    Map<Alike, List<Jar>> alike = new LinkedHashMap<>();
    for (Jar jar : lot.jars()) {
      if (wanted.test(jar)) {
        Alike key = new Alike(headlines.of(jar), place.apply(jar));
        alike.computeIfAbsent(key, k -> new ArrayList<>()).add(jar);
      }
    }
    List<JarGroup> groups = new ArrayList<>();
    alike.forEach((key, jars) -> groups.add(new JarGroup(lot, jars, key.headline(), key.place())));
    groups.sort(
        (a, b) -> {
          int byTone = a.headline().tone().compareTo(b.headline().tone());
          return byTone != 0 ? byTone : a.jars().get(0).id().compareTo(b.jars().get(0).id());
        });
    return groups;
  }

  /** The jars' numbers, each with its page where it has one. */
  List<Map<String, Object>> numbers(Links links) {
    return jars.stream().map(jar -> number(jar, links)).toList();
  }

  static String digits(Jar jar) {
    return String.format(Locale.ROOT, "%02d", jar.id().number());
  }

  private static Map<String, Object> number(Jar jar, Links links) {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("number", digits(jar));
    one.put("href", links.jar(jar).orElse(""));
    return one;
  }
}
