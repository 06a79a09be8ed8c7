package jarwright.cli;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import jarwright.pantry.Entry;
import jarwright.pantry.Jar;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.JarStep;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Pantry;
import jarwright.pantry.Spoiled;
import jarwright.pantry.Standing;
import jarwright.pantry.Undone;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Jars found spoiled, whose lots fall into doubt, and jars in doubt that were looked at. */
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
   * Records that the named jars were spoiled, and says what to check and do.
   *
   * @param what the sign of spoilage
   */
  void record(String what) throws Usage, Refused, IOException {
    LotCode lot = named.codes().keySet().iterator().next();
    Optional<JarNumbers> numbers = named.codes().get(lot);
    if (named.codes().size() != 1 || numbers.isEmpty()) {
      throw new Usage(
          "--spoiled needs the jar or the jars of one lot, as in: jarwright trace 260824A-T/03"
              + " --spoiled \"lid bulged\"");
    }
    List<LedgerEvent> events =
        books.correct(
            before -> {
              List<Jar> jars = named.in(Pantry.of(before), j -> true);
              refuse(jars, before);
              return List.of(
                  Entry.of(books.now(), lot, numbers.get(), new Spoiled(what), books.by()));
            });
    call.out()
        .print(
            new TraceText(books, Pantry.of(books.events()), List.of())
                .spoiled(lot, numbers.get(), what));
    call.out().println(Help.CAUTION);
    call.tell(Events.recorded(events));
  }

  private static void refuse(List<Jar> jars, List<LedgerEvent> before) throws Refused {
    Problems problems = new Problems();
    Set<Long> undone = Undone.numbers(before);
    for (Jar jar : jars) {
      JarId id = jar.id();
      Optional<LedgerEvent> told =
          before.stream()
              .filter(e -> e.what() instanceof Spoiled && !undone.contains(e.number()))
              .filter(e -> e.lot().equals(Optional.of(id.lot())) && e.jars().contains(id.number()))
              .findFirst();
      if (told.isPresent()) {
        problems.add(
            Place.wholeFile(id.toString()),
            "it is recorded as spoiled already, as event " + told.get().number(),
            "jarwright trace " + id.lot() + " shows what is left of the lot");
      } else if (!jar.wasPacked()) {
        boolean planned = jar.standing() instanceof Standing.Planned;
        problems.add(
            Place.wholeFile(id.toString()),
            planned ? "nobody has recorded how it came out yet" : "it was never filled",
            planned ? "jarwright seal " + id.lot() + " first" : "read its label again");
      }
    }
    problems.refuse();
  }

  /** Records that the named jars were looked at and found sound. */
  void lookedAt(String seen) throws Refused, IOException {
    JarStep step = JarStep.lookedAt(seen);
    List<LedgerEvent> events =
        books.record(
            pantry -> {
              List<Jar> jars = named.in(pantry, j -> step.hindrance(j, books.now()).isEmpty());
              Problems problems = new Problems();
              for (Jar jar : jars) {
                step.hindrance(jar, books.now())
                    .ifPresent(
                        h ->
                            problems.add(
                                Place.wholeFile(jar.id().toString()),
                                "it " + h,
                                "only jars in doubt are looked at; jarwright trace "
                                    + jar.id().lot()));
              }
              problems.refuse();
              List<JarId> ids = new ArrayList<>(jars.stream().map(Jar::id).toList());
              return Entry.forJars(books.now(), ids, step, books.by());
            });
    call.tell(Events.recorded(events));
  }
}
