package jarwright.cli;

import jarwright.files.VerdictTable;
import jarwright.lot.JarId;
import jarwright.pantry.Entry;
import jarwright.pantry.Jar;
import jarwright.pantry.JarStep;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Pantry;
import jarwright.pantry.Standing;
import jarwright.pantry.Urgency;
import jarwright.pantry.UseOrder;
import jarwright.problem.Nearest;
import jarwright.problem.Place;
import jarwright.problem.Problem;
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
  private static final String LOOKED = "looked-at";

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
        .addOption(
            CommonOptions.withValue(
                null, LOOKED, "FOUND", "you looked at a jar in doubt and found it sound"))
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
    Optional<String> looked = Optional.of(call.text(LOOKED)).filter(t -> !t.isEmpty());
    String note = call.text(NOTE);
    List<Jar> taken = new ArrayList<>();
    List<LedgerEvent> events =
        books.record(
            pantry -> {
              taken.addAll(named.in(pantry, j -> j.standing().isHere()));
              if (!named.words().isEmpty()) {
                taken.add(first(pantry, named.words(), taken, books, text));
              }
              refuse(new Unfit(text, books.now(), looked.isPresent()).of(taken));
              return entries(taken, books, looked, note);
            });
    for (Jar jar : taken) {
      call.out()
          .println(
              "take "
                  + jar.id()
                  + "  "
                  + JarText.food(jar.facts())
                  + ", "
                  + text.place(jar)
                  + keeps(jar, books));
    }
    taken.stream()
        .filter(j -> !j.facts().madeHere())
        .forEach(
            j ->
                call.out()
                    .println(
                        j.id()
                            + " came from an old list: nobody can vouch for how"
                            + " it was processed."));
    call.out().println(words.caution());
    call.tell(Events.recorded(events));
  }

  private static List<Entry> entries(
      List<Jar> jars, Books books, Optional<String> looked, String note) {
    List<Entry> entries = new ArrayList<>();
    looked.ifPresent(
        found ->
            entries.addAll(
                Entry.forJars(
                    books.now(),
                    jars.stream().filter(j -> j.doubt().isPresent()).map(Jar::id).toList(),
                    JarStep.lookedAt(found),
                    books.by())));
    entries.addAll(
        Entry.forJars(
            books.now(), jars.stream().map(Jar::id).toList(), JarStep.taken(note), books.by()));
    return entries;
  }

  private static void refuse(List<Problem> problems) throws Refused {
    if (!problems.isEmpty()) {
      throw new Refused(problems);
    }
  }

  private static String keeps(Jar jar, Books books) {
    if (jar.standing() instanceof Standing.InRefrigerator) {
      return "";
    }
    return jar.facts()
        .useBy()
        .map(
            d ->
                d.isBefore(books.now().toLocalDate())
                    ? "; best before " + d + ", which is past: look at it well"
                    : "; use by " + d)
        .orElse("; nobody knows how old it is");
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
    List<Problem> problems =
        new ArrayList<>(new Unfit(text, books.now(), false).of(order.of(called.stream())));
    List<JarId> unvouched =
        called.stream()
            .filter(j -> Urgency.of(j, books.now()) == Urgency.UNVOUCHED)
            .map(Jar::id)
            .toList();
    if (!unvouched.isEmpty()) {
      problems.add(unvouched(unvouched));
    }
    throw new Refused(problems);
  }

  private static Problem unvouched(List<JarId> jars) {
    return new Problem(
        Place.wholeFile(NamedJars.shown(jars)),
        "from an old list: nobody can vouch for how it was processed, so none is handed out by"
            + " name",
        "in any doubt do not taste it: jarwright toss JAR --why TEXT; if you know how it was made,"
            + " take it by its code: jarwright take "
            + jars.get(0));
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
