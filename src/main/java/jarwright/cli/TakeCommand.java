package jarwright.cli;

import jarwright.files.VerdictTable;
import jarwright.lot.JarId;
import jarwright.pantry.Checked;
import jarwright.pantry.Entry;
import jarwright.pantry.Jar;
import jarwright.pantry.JarStep;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Pantry;
import jarwright.pantry.Standing;
import jarwright.pantry.UseOrder;
import jarwright.problem.Nearest;
import jarwright.problem.Place;
import jarwright.problem.Problem;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.cli.Options;

/** Jars taken from the shelf to be eaten: those named, or the one of a product to use first. */
final class TakeCommand implements Command {
  private static final String NOTE = "note";

  @Override
  public String name() {
    return "take";
  }

  @Override
  public String arguments() {
    return "JAR… or the name of a product";
  }

  @Override
  public String summary() {
    return "take jars to eat: take 260824A-T/03, or take plums";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.withValue(null, NOTE, "TEXT", "for whom or for what"))
        .addOption(Looks.option())
        .addOption(Books.byOption());
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    NamedJars named = NamedJars.of(call.arguments());
    if (named.isEmpty()) {
      throw new Usage(
          "take needs a jar or a name, as in: jarwright take 260824A-T/03, or: take plums");
    }
    Books books = Books.open(call);
    VerdictText words = new VerdictText(Units.BOTH);
    JarText text = new JarText(words, VerdictTable.read(), books.now());
    Optional<Checked> looked =
        Looks.of(call, Looks.LOOKED, words.wording()).map(seen -> new Checked(seen, ""));
    String note = call.text(NOTE);
    List<Jar> taken = new ArrayList<>();
    List<LedgerEvent> events =
        books.record(
            pantry -> {
              taken.addAll(named.in(pantry, j -> j.standing().isHere()));
              if (!named.words().isEmpty()) {
                taken.add(first(pantry, named.words(), taken, books, text));
              }
              List<Entry> entries = new ArrayList<>();
              if (looked.isPresent()) {
                entries.addAll(looks(taken, looked.get(), books));
                taken.replaceAll(j -> looked.get().after(j, books.now()));
              }
              // What was seen is kept even where, for that very reason, no jar is handed out.
              if (looked.isEmpty() || looked.get().isClean()) {
                refuse(new Unfit(text, books.now()).of(taken));
                entries.addAll(
                    Entry.forJars(books.now(), ids(taken), JarStep.taken(note), books.by()));
              }
              return entries;
            });
    if (looked.isPresent() && !looked.get().isClean()) {
      call.out().print(Indented.of("", "", words.spoiled()));
      call.tell(Events.recorded(events));
      refuse(new Unfit(text, books.now()).of(taken));
    }
    for (Jar jar : taken) {
      call.out()
          .println(
              "take "
                  + jar.id()
                  + "  "
                  + JarText.food(jar.facts())
                  + ", "
                  + text.place(jar)
                  + keeps(jar, books)
                  + text.vouched(jar.origin()));
    }
    call.out().println(words.caution());
    call.tell(Events.recorded(events));
  }

  /** One look at each jar; a clean one is noted of those that are in doubt alone. */
  private static List<Entry> looks(List<Jar> jars, Checked look, Books books) throws Refused {
    List<Jar> meant = jars.stream().filter(j -> !look.isClean() || j.doubt().isPresent()).toList();
    Problems problems = new Problems();
    for (Jar jar : meant) {
      // What is condemned is told as such, not as a look that failed.
      look.hindrance(jar, books.now())
          .filter(h -> !jar.isCondemned())
          .ifPresent(
              h ->
                  problems.add(
                      Place.wholeFile(jar.id().toString()),
                      "it " + h,
                      "Check the number on the label."));
    }
    problems.refuse();
    return meant.isEmpty() ? List.of() : Entry.forJars(books.now(), ids(meant), look, books.by());
  }

  private static List<JarId> ids(List<Jar> jars) {
    return jars.stream().map(Jar::id).toList();
  }

  private static void refuse(List<Problem> problems) throws Refused {
    if (!problems.isEmpty()) {
      throw new Refused(problems);
    }
  }

  private static String keeps(Jar jar, Books books) {
    if (jar.standing() instanceof Standing.InRefrigerator cold) {
      return ", eat by " + cold.eatBy();
    }
    return jar.facts()
        .useBy()
        .map(
            d ->
                d.isBefore(books.now().toLocalDate())
                    ? "; use by "
                        + d
                        + ", a date that has passed. Check the seal and the food. When in doubt,"
                        + " throw it out"
                    : "; use by " + d)
        .orElse("; date not known. Check the seal and the food. When in doubt, throw it out");
  }

  /** The jar of that name to use first. */
  private static Jar first(Pantry pantry, String name, List<Jar> besides, Books books, JarText text)
      throws Refused {
    UseOrder order = new UseOrder(books.now());
    List<Jar> called =
        pantry
            .here()
            .filter(j -> UseOrder.isCalled(j.facts(), name))
            .filter(j -> !besides.contains(j))
            .toList();
    List<Jar> fit = order.toTake(called.stream());
    if (!fit.isEmpty()) {
      return fit.get(0);
    }
    if (called.isEmpty()) {
      throw new Refused(
          Place.wholeFile(NamedJars.shown(name)),
          "no jar in the house goes by that name",
          near(pantry, name));
    }
    throw new Refused(new Unfit(text, books.now()).of(order.of(called.stream())));
  }

  private static String near(Pantry pantry, String name) {
    List<String> there = pantry.here().map(j -> j.facts().product()).distinct().sorted().toList();
    Set<String> begins = new TreeSet<>();
    there.forEach(p -> begins.add(p.split("[- ]")[0]));
    String guess = Nearest.to(name, begins).map(n -> "did you mean " + n + "? ").orElse("");
    return there.isEmpty()
        ? "there is none at all"
        : guess + "(there are: " + String.join(", ", there) + ")";
  }
}
