package jarwright.pantry;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A stock-take: what was seen on the shelves. A jar that no row looked for is not missed.
 *
 * @param rows no jar is found in two of them
 * @param strangers jars without a lot of the household, by what they were called
 * @param leftOut rows in which nothing was filled in
 */
public record StockTake(List<Counted> rows, Map<String, Integer> strangers, int leftOut) {
  public StockTake {
    rows = List.copyOf(rows);
    strangers = Map.copyOf(new TreeMap<>(strangers));
  }

  /** Jars that were seen, strangers not counted. */
  public int seen() {
    return rows.stream().mapToInt(r -> r.found().size()).sum();
  }

  /** In what the ledger differs from what was seen; by kind, then lot. */
  public List<Difference> against(Pantry pantry, OffsetDateTime now) {
    return new Comparison(pantry, now).differences();
  }

  /** The entries that bring the ledger up to what was seen, one for each difference. */
  public static List<Entry> entries(List<Difference> differences, OffsetDateTime now, String by) {
    List<Entry> entries = new ArrayList<>();
    for (Difference difference : differences) {
      difference
          .step()
          .ifPresent(s -> entries.add(Entry.of(now, difference.lot(), difference.jars(), s, by)));
    }
    return entries;
  }

  private final class Comparison {
    private final Pantry pantry;
    private final OffsetDateTime now;
    private final Map<String, String> shelves = new HashMap<>();
    private final Map<JarId, Counted> seen = new HashMap<>();
    private final Map<Difference, List<Integer>> gathered = new LinkedHashMap<>();

    private Comparison(Pantry pantry, OffsetDateTime now) {
      this.pantry = pantry;
      this.now = now;
      pantry.here().forEach(j -> shelves.putIfAbsent(Spot.alike(j.shelf()), j.shelf()));
      for (Counted row : rows) {
        row.found().stream().forEach(n -> seen.put(row.lot().jar(n), row));
      }
    }

    private List<Difference> differences() {
      for (Counted row : rows) {
        Optional<Lot> lot = pantry.lot(row.lot());
        if (lot.isEmpty()) {
          row.found().stream()
              .forEach(n -> add(Difference.Kind.NO_SUCH_LOT, row.lot(), n, Optional.empty(), row));
          continue;
        }
        row.found().stream().forEach(n -> found(lot.get(), n, row));
        row.listed().stream().forEach(n -> missed(lot.get(), n, row));
      }
      List<Difference> all = new ArrayList<>();
      gathered.forEach(
          (d, jars) ->
              all.add(new Difference(d.kind(), d.lot(), JarNumbers.of(jars), d.was(), d.place())));
      all.sort(Comparator.comparing(Difference::kind).thenComparing(Difference::lot));
      return all;
    }

    private void found(Lot lot, int number, Counted row) {
      Optional<Jar> jar = lot.jar(number);
      if (jar.isEmpty()) {
        add(Difference.Kind.NO_SUCH_JAR, lot.code(), number, Optional.empty(), row);
        return;
      }
      Standing standing = jar.get().standing();
      if (standing.isHere()) {
        seenHere(jar.get(), row);
      } else if (standing instanceof Standing.Planned) {
        add(Difference.Kind.NOT_SEALED, lot.code(), number, Optional.of(standing), row);
      } else {
        add(gone(jar.get()), lot.code(), number, Optional.of(standing), row);
      }
    }

    private Difference.Kind gone(Jar jar) {
      JarStep found = JarStep.found("");
      if (found.hindrance(jar, now).isPresent()) {
        return Difference.Kind.IMPOSSIBLE;
      }
      boolean fit = Advice.word(found.after(jar, now), now).mayBeEaten();
      return fit ? Difference.Kind.FOUND : Difference.Kind.TURNED_UP;
    }

    private void seenHere(Jar jar, Counted row) {
      Spot spot = Spot.of(jar.standing());
      boolean there = row.place().map(spot::isCalled).orElse(true);
      boolean condemned = spot.isShelf() && Advice.word(jar, now) == JarWord.THROW_AWAY;
      if (condemned || !there) {
        add(
            elsewhere(spot, condemned),
            jar.id().lot(),
            jar.id().number(),
            Optional.of(jar.standing()),
            row);
      }
    }

    private static Difference.Kind elsewhere(Spot spot, boolean condemned) {
      return switch (spot.kind()) {
        case ON_SHELF -> condemned ? Difference.Kind.NOT_FOR_SHELF : Difference.Kind.MOVED;
        case COOLING -> Difference.Kind.NOT_SEALED;
        default -> Difference.Kind.NOT_FOR_SHELF;
      };
    }

    /** A jar that has left the place on the ledger since the list was made is not missed there. */
    private void missed(Lot lot, int number, Counted row) {
      Optional<Standing> standing = lot.jar(number).map(Jar::standing).filter(Standing::isHere);
      boolean expected =
          standing.isPresent()
              && row.place().map(Spot.of(standing.get())::isCalled).orElse(true)
              && !seen.containsKey(lot.code().jar(number));
      if (expected) {
        Difference key =
            new Difference(Difference.Kind.MISSING, lot.code(), JarNumbers.NONE, standing, "");
        gathered.computeIfAbsent(key, k -> new ArrayList<>()).add(number);
      }
    }

    private void add(
        Difference.Kind kind, LotCode lot, int number, Optional<Standing> was, Counted row) {
      String typed = row.place().orElse("");
      String place = shelves.getOrDefault(Spot.alike(typed), typed.strip());
      Difference key = new Difference(kind, lot, JarNumbers.NONE, was, place);
      gathered.computeIfAbsent(key, k -> new ArrayList<>()).add(number);
    }
  }
}
