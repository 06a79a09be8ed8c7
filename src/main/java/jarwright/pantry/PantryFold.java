package jarwright.pantry;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;

/** Adds event to event until all are in. Total: what makes no sense is remarked and passed over. */
public final class PantryFold {
  /** Two programs at once may write in the other order than they looked at the clock. */
  private static final Duration CLOCK_PLAY = Duration.ofMinutes(2);

  private final Map<Long, LedgerEvent> undone;
  private final Supplier<Foods> foods;
  private final Map<LotCode, LotFold> lots = new TreeMap<>();
  private final List<Remark> remarks = new ArrayList<>();
  private final List<OffsetDateTime> before = new ArrayList<>(1);

  /**
   * A lot while its events are coming in.
   *
   * @param known what an old list tells in words; empty for lots that are planned
   * @param vouched the last one holds
   * @param doubts the first that condemns holds, else the last one
   * @param withdrawn findings of spoilage that were taken back
   */
  private record LotFold(
      LotFacts facts,
      Optional<Planned> planned,
      String known,
      List<Vouched> vouched,
      List<Doubt> doubts,
      List<Reason.Withdrawn> withdrawn,
      List<LoadRun> loads,
      TreeMap<Integer, Jar> jars) {
    private static LotFold of(LotFacts facts, Optional<Planned> planned, String known) {
      return new LotFold(
          facts,
          planned,
          known,
          new ArrayList<>(0),
          new ArrayList<>(0),
          new ArrayList<>(0),
          new ArrayList<>(1),
          new TreeMap<>());
    }

    private static <T> Optional<T> last(List<T> list) {
      return list.isEmpty() ? Optional.empty() : Optional.of(list.get(list.size() - 1));
    }

    private Optional<Doubt> doubt() {
      return doubts.stream().filter(Doubt::condemns).findFirst().or(() -> last(doubts));
    }

    private Background background(Supplier<Foods> foods) {
      Origin origin =
          facts.madeHere()
              ? new Origin.MadeHere()
              : foods.get().origin(facts, known, last(vouched));
      return new Background(origin, known, last(withdrawn));
    }

    private Lot done(LotCode code, Background background) {
      TreeMap<Integer, Jar> done = new TreeMap<>(jars);
      if (!background.equals(Background.PLAIN)) {
        done.replaceAll((n, jar) -> jar.with(background));
      }
      return new Lot(code, facts, planned, background, doubt(), loads, done);
    }

    private boolean isCancelled() {
      return jars.values().stream().anyMatch(j -> j.standing() instanceof Standing.Cancelled);
    }

    /** A jar that was filled beyond the plan. */
    private Jar extra(LotCode code, int number) {
      return Jar.planned(code.jar(number), facts).with(doubt());
    }
  }

  /**
   * @param undoes all events of kind {@link Undone} in the ledger, in order; others do no harm
   * @param foods what the tables know; asked only where jars were spoiled or brought in
   */
  public PantryFold(List<LedgerEvent> undoes, Supplier<Foods> foods) {
    this.undone = Undone.byNumber(undoes);
    this.foods = foods;
  }

  /** Takes the next event, in the order of their numbers. */
  public void add(LedgerEvent event) {
    checkClock(event);
    if (undone.containsKey(event.number())) {
      withdraw(event, undone.get(event.number()));
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
      } else if (lot.isCancelled()) {
        remark(event, "lot " + code + " was cancelled, so it was passed over");
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

  private void withdraw(LedgerEvent event, LedgerEvent undo) {
    LotFold lot = event.lot().map(lots::get).orElse(null);
    if (lot != null && Undone.needsWhy(event.what())) {
      String why = ((Undone) undo.what()).why();
      lot.withdrawn.add(new Reason.Withdrawn(event.when(), undo.when(), why));
    }
  }

  private void plan(LedgerEvent event, LotCode code, Planned planned) {
    LotFold lot = lots.get(code);
    if (lot != null && lot.done(code, Background.PLAIN).isFrozen()) {
      remark(event, "lot " + code + " has outcomes, so its plan stays as it was");
      return;
    }
    LotFold fresh = LotFold.of(planned.facts(), Optional.of(planned), "");
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
    LotFold lot = LotFold.of(imported.facts(), Optional.empty(), imported.known());
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
    } else if (what instanceof Checked checked) {
      check(lot, code, event, checked);
    } else if (what instanceof Vouched vouched) {
      lot.vouched.add(vouched);
    } else if (what instanceof Cancelled cancelled) {
      cancel(lot, code, event, cancelled);
    } else if (what instanceof JarStep step) {
      event.jars().stream().forEach(n -> step(lot, code, n, step, event));
    }
  }

  private static void processed(LotFold lot, LotCode code, int number, LoadRun load) {
    Jar jar = lot.jars.computeIfAbsent(number, n -> lot.extra(code, n));
    if (jar.standing() instanceof Standing.Planned) {
      load.standing(number).ifPresent(s -> lot.jars.put(number, jar.with(s)));
    }
  }

  private void comeOut(LotFold lot, LotCode code, int number, Outcome outcome, LedgerEvent event) {
    Jar jar = lot.jars.computeIfAbsent(number, n -> lot.extra(code, n));
    if (jar.isOpen()) {
      lot.jars.put(number, jar.with(outcome));
    } else {
      remark(event, jar.id() + " " + "is " + jar.standing().kind().text() + " already");
    }
  }

  private void spoil(LotFold lot, LotCode code, LedgerEvent event, Spoiled what) {
    Optional<JarId> cause = event.jars().stream().mapToObj(code::jar).findFirst();
    if (cause.isEmpty()) {
      remark(event, "names no jar, so it was passed over");
      return;
    }
    lot.doubts.add(new Doubt(kind(lot, what), cause.get(), event.when(), what));
    Reason.Harm harm = new Reason.FoundSpoiled(event.when(), what);
    lot.jars.replaceAll(
        (number, jar) -> event.jars().contains(number) ? jar.with(harm) : jar.with(lot.doubt()));
  }

  private Doubt.Kind kind(LotFold lot, Spoiled what) {
    if (!what.cause().isEmpty()) {
      return Doubt.Kind.WHOLE_LOT;
    }
    if (!lot.facts.madeHere()) {
      return Doubt.Kind.NOT_MADE_HERE;
    }
    boolean acid = foods.get().isAcid(lot.facts.product());
    return acid ? Doubt.Kind.TO_CHECK : Doubt.Kind.LOW_ACID;
  }

  private void check(LotFold lot, LotCode code, LedgerEvent event, Checked checked) {
    if (!checked.isClean()) {
      spoil(lot, code, event, checked.spoiled());
      return;
    }
    event.jars().stream()
        .forEach(n -> lot.jars.computeIfPresent(n, (x, jar) -> jar.with(Optional.empty())));
  }

  private void cancel(LotFold lot, LotCode code, LedgerEvent event, Cancelled cancelled) {
    if (lot.done(code, Background.PLAIN).isFrozen()) {
      remark(event, "lot " + code + " has outcomes, so it was passed over");
      return;
    }
    Standing standing = new Standing.Cancelled(event.when(), cancelled.why());
    lot.jars.replaceAll((number, jar) -> jar.with(standing));
  }

  private void step(LotFold lot, LotCode code, int number, JarStep step, LedgerEvent event) {
    Jar jar = lot.jars.get(number);
    if (jar == null) {
      remark(event, code.jar(number) + " is not known, so it was passed over");
      return;
    }
    Optional<String> conflict = step.conflict(jar, event.when());
    if (conflict.isPresent()) {
      remark(event, jar.id() + " " + conflict.get() + ", so it was passed over");
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
    lots.forEach((code, lot) -> done.put(code, lot.done(code, lot.background(foods))));
    return new Pantry(done, remarks);
  }
}
