package jarwright.pantry;

import jarwright.lot.LotCode;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;

/**
 * What a year brought: food by food, and month by month.
 *
 * @param asOf its last day, or the day it is asked on where it is not over
 * @param foods by name, then size of jar
 * @param unrecorded jars planned for a day before its end, of which nothing is recorded
 * @param putUp jars packed in each of the twelve months
 * @param eaten jars taken in each of them
 * @param lost jars thrown away or missed in each of them
 */
public record YearBook(
    int year,
    LocalDate asOf,
    List<FoodYear> foods,
    int unrecorded,
    List<Integer> putUp,
    List<Integer> eaten,
    List<Integer> lost) {
  /** The reason shown for jars that a stock-take did not find. */
  public static final String NOT_FOUND = "not found in a stock-take";

  private static final int MONTHS = 12;

  public YearBook {
    foods = List.copyOf(foods);
    putUp = List.copyOf(putUp);
    eaten = List.copyOf(eaten);
    lost = List.copyOf(lost);
  }

  /**
   * The book of a year.
   *
   * @param events the whole ledger, in order; what was recorded after the year is left out, but
   *     what was taken back is taken back
   * @throws IllegalArgumentException where the year lies ahead
   */
  public static YearBook of(
      List<LedgerEvent> events, int year, OffsetDateTime now, Supplier<Foods> foods) {
    if (year > now.getYear()) {
      throw new IllegalArgumentException("the year " + year + " has not begun");
    }
    OffsetDateTime end =
        year == now.getYear()
            ? now
            : OffsetDateTime.of(LocalDate.of(year, MONTHS, 31), LocalTime.MAX, now.getOffset());
    PantryFold fold = new PantryFold(events, foods);
    Map<LotCode, LocalDate> begun = new HashMap<>();
    for (LedgerEvent event : events) {
      if (event.when().toLocalDate().isAfter(end.toLocalDate())) {
        continue;
      }
      fold.add(event);
      if (event.what() instanceof Outcome || event.what() instanceof Imported) {
        LocalDate day = event.when().toLocalDate();
        event.lot().ifPresent(l -> begun.merge(l, day, (a, b) -> a.isBefore(b) ? a : b));
      }
    }
    return new Reckoning(year, end, begun).book(fold.pantry());
  }

  private static final class Reckoning {
    private final int year;
    private final OffsetDateTime end;
    private final Map<LotCode, LocalDate> begun;
    private final int[] putUp = new int[MONTHS];
    private final int[] eaten = new int[MONTHS];
    private final int[] lost = new int[MONTHS];

    private Reckoning(int year, OffsetDateTime end, Map<LotCode, LocalDate> begun) {
      this.year = year;
      this.end = end;
      this.begun = begun;
    }

    private YearBook book(Pantry pantry) {
      Map<String, List<Jar>> byFood = new TreeMap<>();
      pantry
          .jars()
          .filter(Jar::wasPacked)
          .forEach(
              j ->
                  byFood
                      .computeIfAbsent(
                          j.facts().product() + "\t" + j.facts().jar(), k -> new ArrayList<>())
                      .add(j));
      List<FoodYear> foods = new ArrayList<>();
      byFood.values().forEach(jars -> food(jars).ifPresent(foods::add));
      foods.sort(
          Comparator.comparing((FoodYear f) -> f.facts().shownName())
              .thenComparing(f -> f.facts().jar()));
      int unrecorded =
          (int)
              pantry
                  .jars()
                  .filter(j -> j.standing() instanceof Standing.Planned)
                  .filter(j -> j.facts().packed().filter(d -> d.getYear() == year).isPresent())
                  .filter(j -> Advice.word(j, end) != JarWord.PLANNED)
                  .count();
      return new YearBook(
          year, end.toLocalDate(), foods, unrecorded, list(putUp), list(eaten), list(lost));
    }

    private Optional<FoodYear> food(List<Jar> jars) {
      LocalDate last = end.toLocalDate();
      LocalDate start = first(jars).filter(Pace.start(last)::isBefore).orElse(Pace.start(last));
      Tally tally = new Tally();
      jars.forEach(tally::add);
      LotFacts facts = jars.get(jars.size() - 1).facts();
      Optional<Pace> pace = first(jars).flatMap(d -> Pace.of(lately(jars, start), start, last));
      return tally.isEmpty() ? Optional.empty() : Optional.of(tally.of(facts, pace));
    }

    /** Where a jar is counted: once on the way in, and once on the way out or while it is here. */
    private enum Place {
      BEFORE,
      PUT_UP,
      EATEN,
      RECANNED,
      STOCK,
      DOUBTFUL,
      TO_THROW_AWAY,
      /** Of the stock, those that keep beyond the year. */
      KEEPING
    }

    private final class Tally {
      private final SortedMap<String, Integer> why = new TreeMap<>();
      private final Map<Place, Integer> jars = new EnumMap<>(Place.class);

      private void count(Place place) {
        jars.merge(place, 1, Integer::sum);
      }

      private int of(Place place) {
        return jars.getOrDefault(place, 0);
      }

      private void add(Jar jar) {
        Optional<LocalDate> gone = jar.standing().since().map(OffsetDateTime::toLocalDate);
        int left = gone.map(LocalDate::getYear).orElse(year);
        int came = jar.facts().packed().map(LocalDate::getYear).orElse(Integer.MIN_VALUE);
        // A clock that was wrong must not make a jar leave in the year before it came.
        if (came > year || Math.max(left, came) < year) {
          return;
        }
        count(came == year ? Place.PUT_UP : Place.BEFORE);
        jar.facts().packed().ifPresent(d -> in(d, putUp));
        if (gone.isEmpty()) {
          stay(jar);
        } else {
          leave(jar.standing(), left < year ? jar.facts().packed().orElseThrow() : gone.get());
        }
      }

      private void stay(Jar jar) {
        JarWord word = Advice.word(jar, end);
        if (word.mayBeEaten()) {
          count(Place.STOCK);
          jar.deadline().filter(d -> d.getYear() > year).ifPresent(d -> count(Place.KEEPING));
        } else {
          count(word == JarWord.THROW_AWAY ? Place.TO_THROW_AWAY : Place.DOUBTFUL);
        }
      }

      private void leave(Standing standing, LocalDate day) {
        if (standing instanceof Standing.Taken) {
          in(day, eaten);
          count(Place.EATEN);
        } else if (standing instanceof Standing.Recanned) {
          count(Place.RECANNED);
        } else {
          in(day, lost);
          why.merge(whyLost(standing), 1, Integer::sum);
        }
      }

      private boolean isEmpty() {
        return jars.isEmpty();
      }

      private FoodYear of(LotFacts facts, Optional<Pace> pace) {
        return new FoodYear(
            facts,
            of(Place.BEFORE),
            of(Place.PUT_UP),
            of(Place.EATEN),
            why,
            of(Place.RECANNED),
            of(Place.STOCK),
            of(Place.DOUBTFUL),
            of(Place.TO_THROW_AWAY),
            of(Place.KEEPING),
            pace);
      }
    }

    private static String whyLost(Standing standing) {
      return standing instanceof Standing.Tossed gone ? Spot.alike(gone.why()) : NOT_FOUND;
    }

    private static int lately(List<Jar> jars, LocalDate start) {
      return (int)
          jars.stream()
              .filter(
                  j ->
                      j.standing() instanceof Standing.Taken gone
                          && !gone.when().toLocalDate().isBefore(start))
              .count();
    }

    /** Since when there has been some of it on the ledger. */
    private Optional<LocalDate> first(List<Jar> jars) {
      return jars.stream()
          .map(j -> begun.get(j.id().lot()))
          .filter(Objects::nonNull)
          .min(LocalDate::compareTo);
    }

    /** Adds the day to its month where it lies in the year. */
    private void in(LocalDate day, int[] months) {
      if (day.getYear() == year) {
        months[day.getMonthValue() - 1]++;
      }
    }

    private static List<Integer> list(int[] months) {
      return Arrays.stream(months).boxed().toList();
    }
  }
}
