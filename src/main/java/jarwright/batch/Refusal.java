package jarwright.batch;

import jarwright.plan.BatchPlan;
import jarwright.plan.Kitchen;
import jarwright.problem.Problems;
import jarwright.process.Answer;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.ProcessBook;
import jarwright.process.Setting;
import jarwright.process.TableRow;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says why a setting has no tested process, and what is tested instead. */
final class Refusal {
  private static final String ASK =
      "else freeze or refrigerate, and ask your local extension service";

  private final BatchPlan plan;
  private final Kitchen kitchen;
  private final ProcessBook book;
  private final Problems problems;

  Refusal(BatchPlan plan, Kitchen kitchen, ProcessBook book, Problems problems) {
    this.plan = plan;
    this.kitchen = kitchen;
    this.book = book;
    this.problems = problems;
  }

  void tell(Method method, Pack pack, Answer answer) {
    answer.fold(
        found -> null,
        closed -> {
          problems.add(
              plan.placeOf("method"),
              name() + ": the guide does not recommend " + setting(method, pack, closed.row()),
              instead(closed.tested()));
          return null;
        },
        gap -> {
          problems.add(
              plan.placeOf(key(gap.reason())),
              why(method, pack, gap),
              gap.reason() == Answer.Gap.JAR
                  ? jarsInstead(method, pack) + instead(gap.tested())
                  : instead(gap.tested()));
          return null;
        });
  }

  private String why(Method method, Pack pack, Answer.NotCovered gap) {
    return switch (gap.reason()) {
      case METHOD -> noMethod(method);
      case PACK -> name() + " has no tested " + method + " process for " + pack + " pack";
      case JAR ->
          name()
              + " has no tested "
              + method
              + " process in "
              + plan.jar()
              + " jars, "
              + pack
              + " pack"
              + (isLargest()
                  ? ": a larger jar heats through more slowly than those tested, and no time can be"
                      + " stretched to it"
                  : ": the guide prints no time for this size, and gives it no other size's");
      case ALTITUDE ->
          name()
              + " has no tested "
              + method
              + " process at "
              + kitchen.altitude().text(Style.english(Units.BOTH));
    };
  }

  /** The next smaller and the next larger jar that the same setting is tested in. */
  private String jarsInstead(Method method, Pack pack) {
    List<JarSize> tested =
        Arrays.stream(JarSize.values()).filter(j -> isTested(method, pack, j)).toList();
    Optional<JarSize> smaller =
        tested.stream().filter(j -> j.compareTo(plan.jar()) < 0).reduce((a, b) -> b);
    Optional<JarSize> larger = tested.stream().filter(j -> j.compareTo(plan.jar()) > 0).findFirst();
    String jars =
        Stream.concat(smaller.stream(), larger.stream())
            .map(JarSize::id)
            .collect(Collectors.joining(" or "));
    return jars.isEmpty() ? "" : "use " + jars + " jars; ";
  }

  private boolean isTested(Method method, Pack pack, JarSize jar) {
    return book.lookUp(new Setting(plan.product(), method, pack, jar, kitchen.altitude()))
        .fold(found -> true, closed -> false, gap -> false);
  }

  /** Whether no jar so large is in the product's tables. */
  private boolean isLargest() {
    return book.rows(plan.product().id()).stream().allMatch(r -> r.jar().compareTo(plan.jar()) < 0);
  }

  /** What has no table for boiling water has only pressure tables. */
  private String noMethod(Method method) {
    String why = name() + " has no tested " + method + " process";
    return method == Method.BOILING_WATER
        ? why + ": a low-acid food in boiling water can grow botulism toxin"
        : why;
  }

  private static String key(Answer.Gap gap) {
    return switch (gap) {
      case METHOD -> "method";
      case PACK -> "pack";
      case JAR -> "jar";
      case ALTITUDE -> "altitude";
    };
  }

  private static String setting(Method method, Pack pack, TableRow row) {
    return method
        + ", "
        + pack
        + " pack, "
        + row.jar()
        + " at this altitude ("
        + row.source()
        + ")";
  }

  private static String instead(List<TableRow> tested) {
    return tested.isEmpty()
        ? "nothing is tested for it here; " + ASK
        : "tested here: " + Tested.summary(tested) + "; " + ASK;
  }

  private String name() {
    return plan.product().id();
  }
}
