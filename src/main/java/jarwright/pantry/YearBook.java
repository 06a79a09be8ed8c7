package jarwright.pantry;

import jarwright.lot.LotCode;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a year brought: food by food, and month by month.
 *
 * @param asOf its last day, or the day it is asked on where it is not over
 * @param foods by name, then size of jar
 * @param putUp jars packed in each of the twelve months
 * @param eaten jars taken in each of them
 * @param lost jars thrown away or missed in each of them
 */
public record YearBook(
    int year,
    LocalDate asOf,
    List<FoodYear> foods,
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
  public static YearBook of(List<LedgerEvent> events, int year, OffsetDateTime now) {
    if (year > now.getYear()) {
      throw new IllegalArgumentException("the year " + year + " has not begun");
    }
    OffsetDateTime end =
        year == now.getYear()
            ? now
            : OffsetDateTime.of(LocalDate.of(year, MONTHS, 31), LocalTime.MAX, now.getOffset());
    PantryFold fold = new PantryFold(events);
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
      return new YearBook(year, end.toLocalDate(), foods, list(putUp), list(eaten), list(lost));
    }

    private Optional<FoodYear> food(List<Jar> jars) {
      LocalDate last = end.toLocalDate();
      LocalDate start = first(jars).filter(Pace.start(last)::isBefore).orElse(Pace.start(last));
      SortedMap<String, Integer> why = new TreeMap<>();
      int packed = 0;
      int taken = 0;
      int recanned = 0;
      int stock = 0;
      int keeping = 0;
      for (Jar jar : jars) {
        packed += jar.facts().packed().map(d -> in(d, putUp)).orElse(0);
        Standing standing = jar.standing();
        if (standing instanceof Standing.Taken gone) {
          taken += in(gone.when().toLocalDate(), eaten);
        } else if (standing instanceof Standing.Tossed gone) {
          lose(gone.when().toLocalDate(), Spot.alike(gone.why()), why);
        } else if (standing instanceof Standing.Missing gone) {
          lose(gone.since().toLocalDate(), NOT_FOUND, why);
        } else if (standing instanceof Standing.Recanned gone) {
          recanned += gone.when().getYear() == year ? 1 : 0;
        } else if (isSound(jar)) {
          stock++;
          keeping += jar.deadline().map(d -> d.getYear() > year).orElse(false) ? 1 : 0;
        }
      }
      boolean anything = packed + taken + recanned + stock > 0 || !why.isEmpty();
      LotFacts facts = jars.get(jars.size() - 1).facts();
      Optional<Pace> pace = first(jars).flatMap(d -> Pace.of(lately(jars, start), start, last));
      return anything
          ? Optional.of(new FoodYear(facts, packed, taken, why, recanned, stock, keeping, pace))
          : Optional.empty();
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

    private boolean isSound(Jar jar) {
      return jar.standing().isHere() && Urgency.of(jar, end).compareTo(Urgency.LOOK_AT) > 0;
    }

    private void lose(LocalDate day, String reason, Map<String, Integer> why) {
      if (in(day, lost) > 0) {
        why.merge(reason, 1, Integer::sum);
      }
    }

    /** One where the day lies in the year, which is added to its month. */
    private int in(LocalDate day, int[] months) {
      if (day.getYear() != year) {
        return 0;
      }
      months[day.getMonthValue() - 1]++;
      return 1;
    }

    private static List<Integer> list(int[] months) {
      return Arrays.stream(months).boxed().toList();
    }
  }
}
