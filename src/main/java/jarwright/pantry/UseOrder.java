package jarwright.pantry;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The jars in the house, first to use first. */
public final class UseOrder {
  private static final Comparator<Worded> ORDER =
      Comparator.comparing(Worded::word)
          .thenComparing(w -> w.jar().deadline().orElse(LocalDate.MIN))
          .thenComparing(w -> w.jar().facts().packed().orElse(LocalDate.MIN))
          .thenComparing(w -> w.jar().id());

  private final OffsetDateTime now;

  private record Worded(JarWord word, Jar jar) {}

  public UseOrder(OffsetDateTime now) {
    this.now = now;
  }

  /** All that are in the house, in this order. */
  public List<Jar> of(Stream<Jar> jars) {
    return jars.filter(j -> j.standing().isHere())
        .map(j -> new Worded(Advice.word(j, now), j))
        .sorted(ORDER)
        .map(Worded::jar)
        .toList();
  }

  /**
   * Those that may be handed out to be eaten, in this order: sound, in time, not in doubt, and by a
   * process that is known or vouched for.
   */
  public List<Jar> toTake(Stream<Jar> jars) {
    return of(jars).stream().filter(j -> Advice.word(j, now).mayBeEaten()).toList();
  }

  /**
   * Whether every typed word begins a word of the product's id or name: {@code tomatoes} finds
   * whole and crushed ones, {@code crushed tom} only those. A text without a word finds none.
   */
  public static boolean isCalled(LotFacts facts, String typed) {
    List<String> known = words(facts.product() + " " + facts.name() + " " + facts.jar());
    List<String> wanted = words(typed);
    return !wanted.isEmpty()
        && wanted.stream().allMatch(w -> known.stream().anyMatch(k -> begins(k, w)));
  }

  private static boolean begins(String known, String typed) {
    String singular = typed.endsWith("s") ? typed.substring(0, typed.length() - 1) : typed;
    return known.startsWith(typed) || known.equals(singular);
  }

  private static List<String> words(String text) {
    return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
        .filter(w -> !w.isEmpty())
        .toList();
  }
}
