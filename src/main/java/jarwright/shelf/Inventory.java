package jarwright.shelf;

import jarwright.lot.LotCode;
import jarwright.page.Wording;
import jarwright.pantry.Advice;
import jarwright.pantry.Jar;
import jarwright.pantry.JarWord;
import jarwright.pantry.Standing;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The jars of a household gathered by place and lot, as the sheet lists them. */
final class Inventory {
  private static final Set<JarWord> DUE =
      EnumSet.of(
          JarWord.DO_NOT_EAT_YET,
          JarWord.UNVOUCHED,
          JarWord.REFRIGERATOR,
          JarWord.OVERDUE,
          JarWord.UNDATED,
          JarWord.USE_FIRST,
          JarWord.DUE_SOON);

  /** What has an hour of its own. */
  private static final Set<JarWord> MOMENT = EnumSet.of(JarWord.RECAN, JarWord.COOLING);

  /** What makes jars of a lot share a line. */
  private record Key(
      ShelfPlace place, LotCode lot, JarWord word, String stands, Optional<OffsetDateTime> moment)
      implements Comparable<Key> {
    private static final Comparator<Key> ORDER =
        Comparator.comparing(Key::place)
            .thenComparing(Key::lot)
            .thenComparing(Key::word)
            .thenComparing(Key::stands)
            .thenComparing(k -> k.moment().map(OffsetDateTime::toInstant).orElse(Instant.MIN));

    @Override
    public int compareTo(Key other) {
      return ORDER.compare(this, other);
    }
  }

  private final Map<ShelfPlace, List<ShelfLine>> places = new TreeMap<>();

  Inventory(Stream<Jar> jars, OffsetDateTime now, Wording words) {
    Map<Key, List<Jar>> gathered = new TreeMap<>();
    jars.forEach(
        jar -> {
          Standing standing = jar.standingAt(now);
          ShelfPlace place = ShelfPlace.of(standing, jar.facts().shelf(), words);
          JarWord word = Advice.word(jar, now);
          String stands = place.calls() ? jar.shelf() : "";
          Key key = new Key(place, jar.id().lot(), word, stands, moment(jar, word));
          gathered.computeIfAbsent(key, k -> new ArrayList<>()).add(jar);
        });
    gathered.forEach(
        (key, same) ->
            places.computeIfAbsent(key.place(), p -> new ArrayList<>()).add(line(key, same)));
    places.values().forEach(lines -> lines.sort(ShelfLine.FIRST_TO_USE));
  }

  private static Optional<OffsetDateTime> moment(Jar jar, JarWord word) {
    return MOMENT.contains(word) ? jar.moment() : Optional.empty();
  }

  private static ShelfLine line(Key key, List<Jar> jars) {
    Jar first = jars.get(0);
    return new ShelfLine(
        key.place(),
        key.lot(),
        first.facts(),
        first.origin(),
        key.stands(),
        key.place().calls() ? Optional.empty() : first.deadline(),
        key.moment(),
        jars.stream().map(j -> j.id().number()).sorted().toList(),
        key.word());
  }

  /** Places in the order of the sheet, each with its lines, first to use first. */
  Map<ShelfPlace, List<ShelfLine>> places() {
    return Collections.unmodifiableMap(places);
  }

  /** All lines that are to be used, or looked at, before others; first to use first. */
  List<ShelfLine> due() {
    return lines().filter(l -> DUE.contains(l.word())).sorted(ShelfLine.FIRST_TO_USE).toList();
  }

  /** Jars that fall due in each month from the given one on; earlier ones count with the first. */
  Map<YearMonth, Integer> dueByMonth(YearMonth from, int months) {
    Map<YearMonth, Integer> due = new LinkedHashMap<>();
    for (int i = 0; i < months; i++) {
      due.put(from.plusMonths(i), 0);
    }
    lines()
        .filter(l -> l.counts() && l.word() != JarWord.FREEZER)
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
