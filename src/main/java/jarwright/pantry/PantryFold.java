package jarwright.pantry;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Adds event to event until all are in. Total: what makes no sense is remarked and passed over. */
public final class PantryFold {
  /** Two programs at once may write in the other order than they looked at the clock. */
  private static final Duration CLOCK_PLAY = Duration.ofMinutes(2);

  private final Set<Long> undone;
  private final Map<LotCode, LotFold> lots = new TreeMap<>();
  private final List<Remark> remarks = new ArrayList<>();
  private final List<OffsetDateTime> before = new ArrayList<>(1);

  /** A lot while its events are coming in. */
  private record LotFold(
      LotFacts facts, Optional<Planned> planned, List<LoadRun> loads, TreeMap<Integer, Jar> jars) {
    static LotFold of(LotFacts facts, Optional<Planned> planned) {
      return new LotFold(facts, planned, new ArrayList<>(1), new TreeMap<>());
    }

    Lot done(LotCode code) {
      return new Lot(code, facts, planned, loads, jars);
    }
  }

  /**
   * @param undoes all events of kind {@link Undone} in the ledger, in order; others do no harm
   */
  public PantryFold(List<LedgerEvent> undoes) {
    this.undone = Set.copyOf(Undone.numbers(undoes));
  }

  /** Takes the next event, in the order of their numbers. */
  public void add(LedgerEvent event) {
    checkClock(event);
    if (undone.contains(event.number())) {
      return;
    }
    Happening what = event.what();
    if (what instanceof Opened || what instanceof Undone) {
      return;
    }
    if (event.lot().isEmpty()) {
      remark(event, "names no lot, so it was passed over");
      return;
    }
    LotCode code = event.lot().get();
    if (what instanceof Planned planned) {
      plan(event, code, planned);
    } else if (what instanceof Imported imported) {
      bringIn(event, code, imported);
    } else {
      LotFold lot = lots.get(code);
      if (lot == null) {
        remark(event, "lot " + code + " was never planned, so it was passed over");
      } else {
        addTo(lot, code, event);
      }
    }
  }

  /** Told once, where the clock went back, and not of all that is recorded after it. */
  private void checkClock(LedgerEvent event) {
    if (!before.isEmpty() && event.when().isBefore(before.get(0).minus(CLOCK_PLAY))) {
      remark(
          event,
          "its time " + event.when() + " lies before " + before.get(0) + " of the event before it");
    }
    before.clear();
    before.add(event.when());
  }

  private void plan(LedgerEvent event, LotCode code, Planned planned) {
    LotFold lot = lots.get(code);
    if (lot != null && lot.done(code).isFrozen()) {
      remark(event, "lot " + code + " has outcomes, so its plan stays as it was");
      return;
    }
    LotFold fresh = LotFold.of(planned.facts(), Optional.of(planned));
    for (int number = 1; number <= planned.jars(); number++) {
      fresh.jars.put(number, Jar.planned(code.jar(number), planned.facts()));
    }
    lots.put(code, fresh);
  }

  private void bringIn(LedgerEvent event, LotCode code, Imported imported) {
    if (lots.containsKey(code)) {
      remark(event, "lot " + code + " is there already, so it was passed over");
      return;
    }
    LotFold lot = LotFold.of(imported.facts(), Optional.empty());
    Standing shelf = new Standing.OnShelf(imported.facts().shelf(), false);
    event.jars().stream()
        .forEach(n -> lot.jars.put(n, Jar.planned(code.jar(n), imported.facts()).with(shelf)));
    lots.put(code, lot);
  }

  private void addTo(LotFold lot, LotCode code, LedgerEvent event) {
    Happening what = event.what();
    if (what instanceof LoadRun && lot.planned().isEmpty()) {
      remark(event, "lot " + code + " was not made here, so it was passed over");
    } else if (what instanceof LoadRun load) {
      lot.loads.add(load);
      event.jars().stream().forEach(n -> processed(lot, code, n, load));
    } else if (what instanceof Outcome outcome) {
      event.jars().stream().forEach(n -> comeOut(lot, code, n, outcome, event));
    } else if (what instanceof Spoiled spoiled) {
      spoil(lot, code, event, spoiled);
    } else if (what instanceof JarStep step) {
      event.jars().stream().forEach(n -> step(lot, code, n, step, event));
    }
  }

  private static void processed(LotFold lot, LotCode code, int number, LoadRun load) {
    Jar jar = lot.jars.computeIfAbsent(number, n -> extra(lot, code, n));
    if (jar.standing() instanceof Standing.Planned) {
      load.lookFrom()
          .ifPresent(t -> lot.jars.put(number, jar.with(new Standing.Cooling(load.load(), t))));
    }
  }

  /** A jar that was filled beyond the plan. */
  private static Jar extra(LotFold lot, LotCode code, int number) {
    return Jar.planned(code.jar(number), lot.facts());
  }

  private void comeOut(LotFold lot, LotCode code, int number, Outcome outcome, LedgerEvent event) {
    Jar jar = lot.jars.computeIfAbsent(number, n -> extra(lot, code, n));
    if (jar.isOpen()) {
      lot.jars.put(number, jar.with(outcome));
    } else {
      remark(event, jar.id() + " " + "is " + jar.standing().kind().text() + " already");
    }
  }

  private void spoil(LotFold lot, LotCode code, LedgerEvent event, Spoiled spoiled) {
    Optional<JarId> cause = event.jars().stream().mapToObj(code::jar).findFirst();
    if (cause.isEmpty()) {
      remark(event, "names no jar, so it was passed over");
      return;
    }
    Optional<Doubt> doubt = Optional.of(new Doubt(cause.get(), event.when(), spoiled.seen()));
    lot.jars.replaceAll(
        (number, jar) -> {
          if (!mayTurnUp(jar.standing())) {
            return jar;
          }
          boolean bad = event.jars().contains(number);
          boolean there = !(jar.standing() instanceof Standing.Taken);
          return bad && there ? jar.with(new Standing.ToThrowAway()) : jar.with(doubt);
        });
  }

  /** In the house, or lost or taken and perhaps put back one day: then it is not trusted either. */
  private static boolean mayTurnUp(Standing standing) {
    return standing.isHere()
        || standing instanceof Standing.Missing
        || standing instanceof Standing.Taken;
  }

  private void step(LotFold lot, LotCode code, int number, JarStep step, LedgerEvent event) {
    Jar jar = lot.jars.get(number);
    if (jar == null) {
      remark(event, code.jar(number) + " is not known, so it was passed over");
      return;
    }
    Optional<String> hindrance = step.hindrance(jar, event.when());
    if (hindrance.isPresent()) {
      remark(event, jar.id() + " " + hindrance.get() + ", so it was passed over");
    } else {
      lot.jars.put(number, step.after(jar, event.when()));
    }
  }

  private void remark(LedgerEvent event, String what) {
    remarks.add(new Remark(event.number(), what));
  }

  /** The stock after all events so far. */
  public Pantry pantry() {
    TreeMap<LotCode, Lot> done = new TreeMap<>();
    lots.forEach((code, lot) -> done.put(code, lot.done(code)));
    return new Pantry(done, remarks);
  }
}
