package jarwright.pantry;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Jars are thrown away. That one was spoiled concerns the others of its lot, so it is told sign by
 * sign and is never lost in a reason.
 *
 * @param why in words
 * @param seen the signs of spoilage, none or some; empty where nobody said
 */
public record Tossing(String why, Optional<Set<Sign>> seen) implements JarReport {

  /** Whether the reason speaks of spoilage of which the ledger would learn nothing. */
  public boolean leavesSignsUntold(Jar jar) {
    return seen.isEmpty() && Sign.isSpokenOfIn(why) && !jar.isCondemned();
  }

  @Override
  public Optional<String> hindrance(Jar jar, OffsetDateTime when) {
    Optional<String> first = JarStep.tossed(why).hindrance(jar, when);
    if (first.isPresent()) {
      return first;
    }
    if (leavesSignsUntold(jar)) {
      return Optional.of(
          "was spoiled by what is said, which concerns the others of its lot: tell what was seen");
    }
    return isNew(jar) ? spoiled().hindrance(jar, when) : Optional.empty();
  }

  @Override
  public List<Happening> happenings(Jar jar) {
    List<Happening> happenings = new ArrayList<>();
    if (isNew(jar)) {
      happenings.add(spoiled());
    }
    happenings.add(JarStep.tossed(why));
    return happenings;
  }

  private boolean isNew(Jar jar) {
    boolean told = jar.harm().filter(Reason.FoundSpoiled.class::isInstance).isPresent();
    return seen.filter(s -> !s.isEmpty()).isPresent() && !told;
  }

  private Spoiled spoiled() {
    return new Spoiled(seen.orElse(Set.of()), why, "");
  }
}
