package jarwright.shelf;

import jarwright.lot.LotCode;
import jarwright.page.Wording;
import jarwright.pantry.Jar;
import jarwright.pantry.Standing;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The jars of a household gathered by place and lot, as the sheet lists them. */
final class Inventory {
  /** What makes jars of a lot share a line. */
  private record Key(ShelfPlace place, LotCode lot, boolean useFirst, boolean doubtful)
      implements Comparable<Key> {
    @Override
    public int compareTo(Key other) {
      int order = place.compareTo(other.place);
      order = order != 0 ? order : lot.compareTo(other.lot);
      order = order != 0 ? order : Boolean.compare(other.useFirst, useFirst);
      return order != 0 ? order : Boolean.compare(other.doubtful, doubtful);
    }
  }

  private final Map<ShelfPlace, List<ShelfLine>> places = new TreeMap<>();

  Inventory(Stream<Jar> jars, Wording words) {
    Map<Key, List<Jar>> gathered = new TreeMap<>();
    jars.forEach(
        jar -> {
          ShelfPlace place = ShelfPlace.of(jar.standing(), jar.facts().shelf(), words);
          Key key = new Key(place, jar.id().lot(), jar.isUsedFirst(), jar.doubt().isPresent());
          gathered.computeIfAbsent(key, k -> new ArrayList<>()).add(jar);
        });
    gathered.forEach(
        (key, same) ->
            places.computeIfAbsent(key.place(), p -> new ArrayList<>()).add(line(key, same)));
    places.values().forEach(lines -> lines.sort(ShelfLine.FIRST_TO_USE));
  }

  private static ShelfLine line(Key key, List<Jar> jars) {
    Jar first = jars.get(0);
    return new ShelfLine(
        key.place().name(),
        key.lot(),
        first.facts(),
        useBy(first),
        jars.stream().map(j -> j.id().number()).sorted().toList(),
        key.useFirst(),
        first.standing() instanceof Standing.Planned,
        key.doubtful());
  }

  private static Optional<LocalDate> useBy(Jar jar) {
    if (jar.standing() instanceof Standing.InRefrigerator cold) {
      return Optional.of(cold.eatBy());
    }
    return jar.facts().useBy();
  }

  /** Places in the order of the sheet, each with its lines, first to use first. */
  Map<ShelfPlace, List<ShelfLine>> places() {
    return new LinkedHashMap<>(places);
  }

  /** All lines due by the end of the month after the given day's, first to use first. */
  List<ShelfLine> dueSoon(LocalDate today) {
    LocalDate end = YearMonth.from(today).plusMonths(1).atEndOfMonth();
    return lines()
        .filter(l -> l.useBy().isEmpty() || !l.useBy().get().isAfter(end))
        .sorted(ShelfLine.FIRST_TO_USE)
        .toList();
  }

  /** Jars that fall due in each month from the given one on; earlier ones count with the first. */
  Map<YearMonth, Integer> dueByMonth(YearMonth from, int months) {
    Map<YearMonth, Integer> due = new LinkedHashMap<>();
    for (int i = 0; i < months; i++) {
      due.put(from.plusMonths(i), 0);
    }
    lines()
        .forEach(
            line -> {
              YearMonth month = line.useBy().map(YearMonth::from).orElse(from);
              YearMonth shown = month.isBefore(from) ? from : month;
              due.computeIfPresent(shown, (m, n) -> n + line.numbers().size());
            });
    return due;
  }

  Stream<ShelfLine> lines() {
    return places.values().stream().flatMap(List::stream);
  }
}
