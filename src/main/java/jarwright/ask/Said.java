package jarwright.ask;

import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import java.util.List;
import java.util.Optional;

/**
 * What was said beside the food.
 *
 * @param untestedJar a jar that was named and that no process here is for, save a few products
 * @param methods none where no method was named
 * @param times lengths of time as they were said, as {@code 3 hours}; never used for anything
 * @param inHours whether one of them is in hours
 * @param altitude as it was said with its unit, as {@code 5,400 ft}
 * @param choices packs and jars where more than one of a kind was named
 */
public record Said(
    Optional<Pack> pack,
    Optional<JarSize> jar,
    Optional<Untested> untestedJar,
    List<Method> methods,
    List<String> times,
    boolean inHours,
    Optional<String> altitude,
    Choices choices) {
  public Said {
    methods = List.copyOf(methods);
    times = List.copyOf(times);
  }

  /** Nothing at all. */
  public static final Said NOTHING =
      new Said(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of(),
          List.of(),
          false,
          Optional.empty(),
          new Choices(List.of(), List.of(), false));

  /**
   * All that was named of a kind, in its order.
   *
   * @param counted whether a number stood before the jars, as in {@code 2 quarts}
   */
  public record Choices(List<Pack> packs, List<JarSize> jars, boolean counted) {
    public Choices {
      packs = List.copyOf(packs);
      jars = List.copyOf(jars);
    }
  }

  /** Whether there was nothing beside the food. */
  public boolean isNothing() {
    return pack.isEmpty()
        && jar.isEmpty()
        && untestedJar.isEmpty()
        && methods.isEmpty()
        && times.isEmpty()
        && altitude.isEmpty();
  }
}
