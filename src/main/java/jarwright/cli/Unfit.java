package jarwright.cli;

import jarwright.lot.JarId;
import jarwright.pantry.Advice;
import jarwright.pantry.Jar;
import jarwright.pantry.JarStep;
import jarwright.pantry.JarWord;
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
  private final Map<Said, List<JarId>> said = new LinkedHashMap<>();

  /**
   * @param remedy with {@value #NAMES} where the jars are to be named
   */
  private record Said(String what, String remedy) {}

  Unfit(JarText text, OffsetDateTime now) {
    this.text = text;
    this.now = now;
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
    if (JarStep.taken("").hindrance(jar, now).isEmpty()) {
      return;
    }
    String why = String.join(" ", text.reasons(jar));
    String what =
        JarText.food(jar.facts()) + ": " + text.standing(jar) + (why.isEmpty() ? "" : ". " + why);
    Said same = new Said(what, remedy(jar));
    said.computeIfAbsent(same, s -> new ArrayList<>()).add(jar.id());
  }

  private String remedy(Jar jar) {
    // A jar that was not found shows that; what it was before keeps it from being eaten.
    JarWord word =
        jar.standing() instanceof Standing.Missing lost
            ? Advice.word(lost.found(jar), now)
            : Advice.word(jar, now);
    return switch (word) {
      case THROW_AWAY ->
          "Do not open or taste it. Throw it away, then: jarwright toss " + NAMES + " --why TEXT";
      case RECAN ->
          "Do so. Or put it into the refrigerator and take it from there: jarwright move "
              + NAMES
              + " --to refrigerator";
      case DO_NOT_EAT_YET ->
          "Do not taste it. Look it over sign by sign: jarwright take "
              + NAMES
              + " --looked-at none, or --looked-at with what you see, as leaks,mold. If you are not"
              + " sure, throw it away";
      case UNVOUCHED ->
          "If somebody knows by which tested process it was canned: jarwright trace "
              + jar.id().lot()
              + " --vouched-by NAME --source TEXT. If not, throw it away";
      case COOLING, TEST_SEAL, PLANNED, NOT_RECORDED ->
          "Record the results: jarwright seal " + jar.id().lot();
      default ->
          "Wrong jar? Check the number on the label. Still have it? jarwright trace "
              + jar.id()
              + " shows the event to undo";
    };
  }
}
