package jarwright.cli;

import jarwright.files.VerdictTable;
import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import jarwright.pantry.Entry;
import jarwright.pantry.Happening;
import jarwright.pantry.Jar;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.JarStep;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Sign;
import jarwright.pantry.Spoiled;
import jarwright.pantry.Tossing;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
        .addOption(CommonOptions.withValue(null, WHY, "TEXT", "as: broken; too old"))
        .addOption(Looks.seenOption())
        .addOption(Books.byOption());
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    NamedJars named = NamedJars.of(call.arguments());
    String why = call.text(WHY);
    if (named.isEmpty() || !named.words().isEmpty() || why.isEmpty()) {
      throw new Usage(
          "toss needs jars by their codes and a reason, as in: jarwright toss 260824A-T/03 --why"
              + " broken; and --seen bulges,leaks for what was spoiled");
    }
    Books books = Books.open(call);
    VerdictText words = new VerdictText(Units.BOTH);
    JarText text = new JarText(words, VerdictTable.read(), books.now());
    Tossing tossing = new Tossing(why, Looks.of(call, Looks.SEEN, words.wording()));
    List<Jar> tossed = new ArrayList<>();
    List<LedgerEvent> events =
        books.record(
            pantry -> {
              tossed.addAll(
                  named.in(pantry, j -> JarStep.tossed(why).hindrance(j, books.now()).isEmpty()));
              refuse(tossed, tossing, books, text);
              return entries(tossed, tossing, books);
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
    if (tossing.seen().filter(s -> !s.isEmpty()).isPresent()) {
      Map<LotCode, JarNumbers> lots = new TreeMap<>();
      tossed.forEach(
          j -> lots.merge(j.id().lot(), JarNumbers.of(j.id().number()), JarNumbers::plus));
      SpoiledJars.say(call, books, lots, new Spoiled(tossing.seen().get(), why, ""));
    } else {
      call.out().print(Indented.of("", "", words.spoiled()));
    }
    call.tell(Events.recorded(events));
  }

  private static void refuse(List<Jar> jars, Tossing tossing, Books books, JarText text)
      throws Refused {
    Problems problems = new Problems();
    for (Jar jar : jars) {
      Place where = Place.wholeFile(jar.id().toString());
      if (tossing.leavesSignsUntold(jar)) {
        problems.add(
            where,
            "\""
                + NamedJars.shown(tossing.why())
                + "\" speaks of spoilage, which concerns the other jars of the lot too",
            "Add --seen with what you saw of "
                + String.join(", ", Sign.words())
                + "; or --seen none if the food was not spoiled");
      } else if (tossing.hindrance(jar, books.now()).isPresent()) {
        problems.add(
            where,
            JarText.food(jar.facts()) + ": " + text.standing(jar) + ". Nothing to throw away",
            "Check the number on the label. jarwright trace " + jar.id() + " shows its story");
      }
    }
    problems.refuse();
  }

  private static List<Entry> entries(List<Jar> jars, Tossing tossing, Books books) {
    Map<Happening, List<JarId>> byHappening = new LinkedHashMap<>();
    for (Jar jar : jars) {
      for (Happening what : tossing.happenings(jar)) {
        byHappening.computeIfAbsent(what, w -> new ArrayList<>()).add(jar.id());
      }
    }
    List<Entry> entries = new ArrayList<>();
    byHappening.forEach(
        (what, ids) -> entries.addAll(Entry.forJars(books.now(), ids, what, books.by())));
    return entries;
  }
}
