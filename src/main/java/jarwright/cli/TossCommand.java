package jarwright.cli;

import jarwright.files.VerdictTable;
import jarwright.pantry.Entry;
import jarwright.pantry.Jar;
import jarwright.pantry.JarStep;
import jarwright.pantry.LedgerEvent;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.cli.Options;

/** Jars thrown away, with the reason, from which next year is to learn. */
final class TossCommand implements Command {
  private static final String WHY = "why";

  @Override
  public String name() {
    return "toss";
  }

  @Override
  public String arguments() {
    return "JAR… --why TEXT";
  }

  @Override
  public String summary() {
    return "record jars as thrown away, and why";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.withValue(null, WHY, "TEXT", "as: broken; lid bulged; too old"))
        .addOption(Books.byOption());
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    NamedJars named = NamedJars.of(call.arguments());
    String why = call.text(WHY);
    if (named.isEmpty() || !named.words().isEmpty() || why.isEmpty()) {
      throw new Usage(
          "toss needs jars by their codes and a reason, as in: jarwright toss 260824A-T/03 --why"
              + " \"lid bulged\"");
    }
    Books books = Books.open(call);
    VerdictText words = new VerdictText(Units.BOTH);
    JarText text = new JarText(words, VerdictTable.read(), books.now());
    List<Jar> tossed = new ArrayList<>();
    List<LedgerEvent> events =
        books.record(
            pantry -> {
              JarStep step = JarStep.tossed(why);
              tossed.addAll(named.in(pantry, j -> step.hindrance(j, books.now()).isEmpty()));
              Problems problems = new Problems();
              tossed.stream()
                  .filter(j -> step.hindrance(j, books.now()).isPresent())
                  .forEach(
                      j ->
                          problems.add(
                              Place.wholeFile(j.id().toString()),
                              JarText.food(j.facts())
                                  + ": "
                                  + text.place(j)
                                  + ", so it cannot be thrown away",
                              "read its label again"));
              problems.refuse();
              return Entry.forJars(
                  books.now(), tossed.stream().map(Jar::id).toList(), step, books.by());
            });
    tossed.forEach(
        j ->
            call.out()
                .println(
                    j.id()
                        + "  "
                        + JarText.food(j.facts())
                        + ", was "
                        + text.place(j)
                        + ": thrown away, "
                        + why));
    call.out().println(words.spoiled());
    call.tell(Events.recorded(events));
  }
}
