package jarwright.pantry;

import jarwright.lot.LotCode;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Brings an old list into the ledger: a lot for each row that is not in it already. */
public final class OldList {
  /** Jars whose day of packing nobody knows get lots counted from here: no real batch has it. */
  public static final LocalDate DAY_NOT_KNOWN = LocalDate.of(2000, 1, 1);

  private static final int DAYS_TRIED = 366;

  private final List<LedgerEvent> events;
  private final Set<Long> used = new HashSet<>();
  private final Set<LotCode> taken = new HashSet<>();

  private OldList(List<LedgerEvent> events) {
    this.events = events;
  }

  /**
   * A row and the lot that it gets, or the one that it has already.
   *
   * @param isVouched whether its list vouches for it otherwise than the ledger does
   */
  public record Placed(OldJars row, LotCode lot, boolean isNew, boolean isVouched) {}

  /**
   * Gives each row its lot. As many rows as the ledger tells of already are left as they are.
   *
   * @return for each row in order its lot; empty where its day has no letter left
   */
  public static List<Optional<Placed>> place(List<OldJars> rows, List<LedgerEvent> events) {
    Set<Long> undone = Undone.numbers(events);
    OldList list = new OldList(events.stream().filter(e -> !undone.contains(e.number())).toList());
    // What was taken back keeps its letter: its labels may still be about.
    events.forEach(e -> e.lot().ifPresent(list.taken::add));
    List<Optional<Placed>> placed = new ArrayList<>();
    rows.forEach(row -> placed.add(list.place(row)));
    return placed;
  }

  private Optional<Placed> place(OldJars row) {
    Optional<LedgerEvent> told =
        events.stream().filter(e -> row.isToldBy(e) && !used.contains(e.number())).findFirst();
    if (told.isPresent()) {
      used.add(told.get().number());
      LotCode lot = told.get().lot().orElseThrow();
      boolean other = row.vouched().isPresent() && !row.vouched().equals(vouched(lot));
      return Optional.of(new Placed(row, lot, false, other));
    }
    return free(row).map(lot -> new Placed(row, lot, true, row.vouched().isPresent()));
  }

  /** By the last word that the ledger has. */
  private Optional<Vouched> vouched(LotCode lot) {
    return events.stream()
        .filter(e -> e.lot().equals(Optional.of(lot)) && e.what() instanceof Vouched)
        .map(e -> (Vouched) e.what())
        .reduce((first, second) -> second);
  }

  /** The first free letter of the days on which the jars can have been packed. */
  private Optional<LotCode> free(OldJars row) {
    LocalDate first = row.facts().packed().orElse(DAY_NOT_KNOWN);
    LocalDate last = row.packedBy().orElse(first.plusDays(DAYS_TRIED));
    for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
      for (char letter = 'A'; letter <= 'Z'; letter++) {
        LotCode lot = new LotCode(day, letter);
        if (taken.add(lot)) {
          return Optional.of(lot);
        }
      }
    }
    return Optional.empty();
  }

  /** The entries of the rows that are new, and of the words that are given for old ones. */
  public static List<Entry> entries(List<Placed> placed, OffsetDateTime now, String by) {
    List<Entry> entries = new ArrayList<>();
    for (Placed one : placed) {
      if (one.isNew()) {
        Imported imported = new Imported(one.row().facts(), one.row().known());
        JarNumbers jars = JarNumbers.range(1, one.row().jars());
        entries.add(Entry.of(now, one.lot(), jars, imported, by));
      }
      if (one.isVouched()) {
        entries.add(Entry.of(now, one.lot(), one.row().vouched().orElseThrow(), by));
      }
    }
    return entries;
  }
}
