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
 */
public record Said(
    Optional<Pack> pack,
    Optional<JarSize> jar,
    Optional<Untested> untestedJar,
    List<Method> methods,
    List<String> times,
    boolean inHours,
    Optional<String> altitude) {
  public Said {
    methods = List.copyOf(methods);
    times = List.copyOf(times);
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
