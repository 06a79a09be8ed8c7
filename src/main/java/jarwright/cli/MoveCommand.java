package jarwright.cli;

import jarwright.files.VerdictTable;
import jarwright.lot.LotCode;
import jarwright.pantry.Deed;
import jarwright.pantry.Entry;
import jarwright.pantry.Jar;
import jarwright.pantry.JarStep;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Pantry;
import jarwright.pantry.Standing;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.cli.Options;

/**
 * Jars moved to another shelf. A jar whose verdict keeps it off the shelf goes where the verdict
 * allows: into the refrigerator, the freezer, or the jars of another lot.
 */
final class MoveCommand implements Command {
  private static final String TO = "to";
  private static final String RECANNED = "recanned-as";
  private static final Set<String> REFRIGERATOR = Set.of("refrigerator", "fridge");
  private static final Set<String> FREEZER = Set.of("freezer");
  private static final int LONGEST_SHELF = 60;

  @Override
  public String name() {
    return "move";
  }

  @Override
  public String arguments() {
    return "JAR… --to SHELF";
  }

  @Override
  public String summary() {
    return "put jars on another shelf, or where their verdict sends them";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(
            CommonOptions.withValue(
                null, TO, "SHELF", "the shelf; refrigerator or freezer for jars not for a shelf"))
        .addOption(
            CommonOptions.withValue(null, RECANNED, "LOT", "canned again, in jars of this lot"))
        .addOption(Books.byOption());
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    NamedJars named = NamedJars.of(call.arguments());
    if (named.isEmpty() || call.has(TO) == call.has(RECANNED)) {
      throw new Usage("move needs jars and a shelf, as in: jarwright move 260824A-T/03 --to attic");
    }
    if (!named.words().isEmpty()) {
      throw new Usage(
          "move needs the jars' codes, not \""
              + NamedJars.shown(named.words())
              + "\"; a shelf of several words needs quotes, as in: --to \"cellar B3\"");
    }
    String shelf = call.text(TO);
    if (call.has(TO) && (shelf.isEmpty() || shelf.length() > LONGEST_SHELF)) {
      throw new Usage("a shelf has a name of 1 to " + LONGEST_SHELF + " characters");
    }
    Optional<LotCode> into = into(call);
    Books books = Books.open(call);
    JarText text = new JarText(new VerdictText(Units.BOTH), VerdictTable.read(), books.now());
    List<String> said = new ArrayList<>();
    List<LedgerEvent> events =
        books.record(
            pantry -> {
              List<Jar> jars = named.in(pantry, j -> j.standing().isHere());
              Map<Jar, JarStep> steps = new LinkedHashMap<>();
              Problems problems = new Problems();
              checkInto(into, pantry, jars, problems);
              for (Jar jar : jars) {
                JarStep step = step(jar, shelf, into);
                steps.put(jar, step);
                check(jar, step, books, text, problems);
              }
              problems.refuse();
              steps.forEach((jar, step) -> said.add(line(jar, step)));
              return entries(steps, books);
            });
    said.forEach(call.out()::println);
    call.tell(Events.recorded(events));
  }

  private static Optional<LotCode> into(Call call) throws Refused {
    Optional<String> typed = call.value(RECANNED);
    return typed.isEmpty() ? Optional.empty() : Optional.of(Books.code(typed.get()));
  }

  private static void checkInto(
      Optional<LotCode> into, Pantry pantry, List<Jar> jars, Problems problems) {
    if (into.isEmpty()) {
      return;
    }
    if (pantry.lot(into.get()).isEmpty()) {
      problems.addAll(List.of(Books.unknown(pantry, into.get())));
    }
    for (Jar jar : jars) {
      if (jar.id().lot().equals(into.get())) {
        problems.add(
            Place.wholeFile(jar.id().toString()),
            "what is canned again gets a lot of its own, not " + into.get(),
            "make a kit for it first");
      }
    }
  }

  /** What the words mean for this jar: a sound jar in the refrigerator merely stands there. */
  private static JarStep step(Jar jar, String shelf, Optional<LotCode> into) {
    if (into.isPresent()) {
      return JarStep.recanned(into.get().toString());
    }
    String word = shelf.toLowerCase(Locale.ROOT);
    Standing standing = jar.standing();
    if (FREEZER.contains(word) && !(standing instanceof Standing.OnShelf)) {
      return JarStep.frozen();
    }
    if (REFRIGERATOR.contains(word)
        && standing instanceof Standing.ToRecan recan
        && recan.eatBy().isPresent()) {
      return JarStep.refrigerated(recan.eatBy().get());
    }
    return JarStep.moved(shelf);
  }

  private static void check(Jar jar, JarStep step, Books books, JarText text, Problems problems) {
    if (step.hindrance(jar, books.now()).isEmpty()) {
      return;
    }
    String why = String.join(" ", text.reasons(jar));
    Standing standing = jar.standingAt(books.now());
    boolean moving = step.deed() == Deed.MOVED;
    String remedy =
        switch (standing.kind()) {
          case PLANNED, COOLING -> "jarwright seal " + jar.id().lot() + " first";
          case TO_THROW_AWAY ->
              "Do not open or taste it. Throw it away, then: jarwright toss "
                  + jar.id()
                  + " --why TEXT";
          case TO_RECAN -> "--to freezer, --to refrigerator, or --recanned-as LOT";
          case IN_REFRIGERATOR -> "it stays there, or --to freezer";
          default ->
              jar.doubt().isPresent()
                  ? "Look it over first. See: jarwright trace " + jar.id().lot()
                  : "Wrong jar? Check the number on the label. Still have it? jarwright trace "
                      + jar.id()
                      + " shows the event to undo";
        };
    problems.add(
        Place.wholeFile(jar.id().toString()),
        JarText.food(jar.facts())
            + ": "
            + text.standing(jar)
            + (moving ? ", so it cannot go to a shelf" : "")
            + (why.isEmpty() ? "" : ". " + why),
        remedy);
  }

  private static List<Entry> entries(Map<Jar, JarStep> steps, Books books) {
    Map<JarStep, List<Jar>> alike = new LinkedHashMap<>();
    steps.forEach((jar, step) -> alike.computeIfAbsent(step, s -> new ArrayList<>()).add(jar));
    List<Entry> entries = new ArrayList<>();
    alike.forEach(
        (step, jars) ->
            entries.addAll(
                Entry.forJars(books.now(), jars.stream().map(Jar::id).toList(), step, books.by())));
    return entries;
  }

  private static String line(Jar jar, JarStep step) {
    String what = jar.id() + "  " + JarText.food(jar.facts()) + ": ";
    return switch (step.deed()) {
      case FROZEN -> what + "in the freezer";
      case REFRIGERATED -> what + "in the refrigerator, eat by " + step.word();
      case RECANNED -> what + "canned again as " + step.word();
      default ->
          what
              + "from "
              + (jar.shelf().isEmpty() ? "a shelf without a name" : jar.shelf())
              + " to "
              + step.word();
    };
  }
}
