package jarwright.cli;

import jarwright.lot.JarId;
import jarwright.pantry.Jar;
import jarwright.pantry.JarStep;
import jarwright.pantry.Standing;
import jarwright.problem.Place;
import jarwright.problem.Problem;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What speaks against eating jars. Jars of which the same is to be said are told together. */
final class Unfit {
  private static final String NAMES = "JARS";

  private final JarText text;
  private final OffsetDateTime now;
  private final boolean looked;
  private final Map<Said, List<JarId>> said = new LinkedHashMap<>();

  /**
   * @param remedy with {@value #NAMES} where the jars are to be named
   */
  private record Said(String what, String remedy) {}

  /**
   * @param looked whether somebody says that jars in doubt were looked at and found sound
   */
  Unfit(JarText text, OffsetDateTime now, boolean looked) {
    this.text = text;
    this.now = now;
    this.looked = looked;
  }

  /** None where all may be eaten. */
  List<Problem> of(List<Jar> jars) {
    said.clear();
    jars.forEach(this::check);
    List<Problem> problems = new ArrayList<>();
    said.forEach(
        (what, ids) -> {
          String names = NamedJars.shown(ids);
          problems.add(
              new Problem(
                  Place.wholeFile(names), what.what(), what.remedy().replace(NAMES, names)));
        });
    return problems;
  }

  private void check(Jar jar) {
    Standing standing = jar.standingAt(now);
    boolean there = standing.isHere() || standing instanceof Standing.Missing;
    String reasons = String.join(" ", text.reasons(jar));
    if (standing instanceof Standing.Planned) {
      say(
          jar,
          "not sealed yet: nobody has recorded how it came out",
          "jarwright seal " + jar.id().lot());
    } else if (standing instanceof Standing.Cooling) {
      say(
          jar,
          text.place(jar) + ", so it cannot be taken",
          "when it has cooled: jarwright seal " + jar.id().lot());
    } else if (standing instanceof Standing.ToThrowAway) {
      say(
          jar,
          "to be thrown away, so it cannot be taken. " + reasons,
          "never taste it; jarwright toss " + NAMES + " --why TEXT");
    } else if (standing instanceof Standing.ToRecan) {
      say(
          jar,
          "its verdict keeps it from being eaten as it is: " + text.place(jar) + ". " + reasons,
          "do so; or put it into the refrigerator and take it from there: jarwright move "
              + NAMES
              + " --to refrigerator");
    } else if (there && JarText.doubt(jar).isPresent() && !looked) {
      say(
          jar,
          "in doubt. " + JarText.doubt(jar).get(),
          "look at it without tasting; if it is sound, take it with --looked-at \"what you saw\";"
              + " else jarwright toss "
              + NAMES
              + " --why TEXT");
    } else if (JarStep.taken("").hindrance(jar, now).isPresent()) {
      say(jar, text.place(jar) + ", so it cannot be taken", "read its label again");
    }
  }

  private void say(Jar jar, String what, String remedy) {
    Said same = new Said(JarText.food(jar.facts()) + ": " + what, remedy);
    said.computeIfAbsent(same, s -> new ArrayList<>()).add(jar.id());
  }
}
