package jarwright.cli;

import jarwright.files.FoodTables;
import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import jarwright.pantry.Checked;
import jarwright.pantry.Entry;
import jarwright.pantry.Jar;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Pantry;
import jarwright.pantry.Sign;
import jarwright.pantry.Spoiled;
import jarwright.pantry.Standing;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Jars found spoiled, whose lots fall into doubt, and jars in doubt that were looked over. */
final class SpoiledJars {
  private final Call call;
  private final Books books;
  private final NamedJars named;

  SpoiledJars(Call call, Books books, NamedJars named) {
    this.call = call;
    this.books = books;
    this.named = named;
  }

  /**
   * What was spoiled, told by signs or in words.
   *
   * @param cause what is wrong with the whole lot; may be empty
   * @throws Usage where it says that nothing was
   */
  static Spoiled told(String what, String cause) throws Usage {
    if (what.equalsIgnoreCase(Sign.NONE)) {
      throw new Usage(
          "--spoiled takes what you saw, as leaks,bulges or in words; a jar without any sign is not"
              + " spoiled");
    }
    try {
      return new Spoiled(Sign.parse(what), "", cause);
    } catch (IllegalArgumentException e) {
      return new Spoiled(Set.of(), what, cause);
    }
  }

  /** Records that the named jars were spoiled, and says what to check and do. */
  void record(Spoiled what) throws Usage, Refused, IOException {
    LotCode lot = named.codes().keySet().iterator().next();
    Optional<JarNumbers> numbers = named.codes().get(lot);
    if (named.codes().size() != 1 || numbers.isEmpty()) {
      throw new Usage(
          "--spoiled needs the jar or the jars of one lot, as in: jarwright trace 260824A-T/03"
              + " --spoiled \"lid bulged\"");
    }
    List<LedgerEvent> events =
        books.record(
            pantry -> {
              refuse(named.in(pantry, j -> true), what);
              return List.of(Entry.of(books.now(), lot, numbers.get(), what, books.by()));
            });
    say(call, books, Map.of(lot, numbers.get()), what);
    call.tell(Events.recorded(events));
  }

  /** What to check and do now that jars of these lots were found spoiled. */
  static void say(Call call, Books books, Map<LotCode, JarNumbers> spoiled, Spoiled what)
      throws IOException, Refused {
    TraceText text = new TraceText(books, Pantry.of(books.events(), FoodTables::own), List.of());
    for (Map.Entry<LotCode, JarNumbers> lot : spoiled.entrySet()) {
      call.out().print(text.spoiled(lot.getKey(), lot.getValue(), what));
    }
    call.out().println(Help.CAUTION);
  }

  private void refuse(List<Jar> jars, Spoiled what) throws Refused {
    Problems problems = new Problems();
    for (Jar jar : jars) {
      JarId id = jar.id();
      Optional<String> hindrance = what.hindrance(jar, books.now());
      if (hindrance.isEmpty()) {
        continue;
      }
      boolean planned = jar.standing() instanceof Standing.Planned;
      problems.add(
          Place.wholeFile(id.toString()),
          planned ? "its results are not recorded yet" : "it " + hindrance.get(),
          planned
              ? "jarwright seal " + id.lot() + " first"
              : "jarwright trace " + id.lot() + " shows what is left of the lot");
    }
    problems.refuse();
  }

  /** Records what was seen of the named jars, which lifts the doubt only where no sign was. */
  void lookedAt(Set<Sign> seen) throws Refused, IOException {
    Checked checked = new Checked(seen, "");
    Map<LotCode, JarNumbers> meant = new TreeMap<>();
    List<LedgerEvent> events =
        books.record(
            pantry -> {
              List<Jar> jars = named.in(pantry, j -> checked.hindrance(j, books.now()).isEmpty());
              Problems problems = new Problems();
              for (Jar jar : jars) {
                meant.merge(jar.id().lot(), JarNumbers.of(jar.id().number()), JarNumbers::plus);
                checked
                    .hindrance(jar, books.now())
                    .ifPresent(
                        h ->
                            problems.add(
                                Place.wholeFile(jar.id().toString()),
                                "it " + h,
                                jar.isCondemned()
                                    ? "Do not open it. Throw it away, then: jarwright toss "
                                        + jar.id()
                                        + " --why TEXT"
                                    : "only jars in doubt are looked over; jarwright trace "
                                        + jar.id().lot()));
              }
              problems.refuse();
              List<JarId> ids = jars.stream().map(Jar::id).toList();
              return Entry.forJars(books.now(), ids, checked, books.by());
            });
    if (!checked.isClean()) {
      say(call, books, meant, new Spoiled(seen, "", ""));
    }
    call.tell(Events.recorded(events));
  }
}
