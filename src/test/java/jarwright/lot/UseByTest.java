package jarwright.lot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UseByTest {
  @ParameterizedTest(name = "packed {0}, {1} months: use by {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2026-08-24 | 12 | 2027-08-24
          2026-08-24 |  1 | 2026-09-24
          2026-08-24 | 18 | 2028-02-24
          2026-08-31 |  6 | 2027-02-28
          2027-08-31 |  6 | 2028-02-29
          2028-02-29 | 12 | 2029-02-28
          2026-01-31 |  1 | 2026-02-28
          2026-03-31 |  1 | 2026-04-30
          2026-12-31 |  2 | 2027-02-28
          """)
  void isTheSameDayOfTheMonthOrTheLastOneOfAShorterMonth(
      LocalDate packed, int months, LocalDate useBy) {
    assertEquals(useBy, UseBy.after(packed, months).date());
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 19, Integer.MAX_VALUE, Integer.MIN_VALUE})
  void otherMonthsAreRefused(int months) {
    var refused =
        assertThrows(
            IllegalArgumentException.class, () -> UseBy.after(LocalDate.of(2026, 8, 24), months));
    assertEquals("months to use-by are 1 to 18, not " + months, refused.getMessage());
  }

  @Test
  void isNeverLaterThanSoManyTimesTheLongestMonth() {
    for (LocalDate day = LocalDate.of(2026, 1, 1); day.getYear() < 2030; day = day.plusDays(1)) {
      for (int months = 1; months <= UseBy.MOST_MONTHS; months++) {
        LocalDate useBy = UseBy.after(day, months).date();
        assertTrue(useBy.isAfter(day) && !useBy.isAfter(day.plusDays(31L * months)));
        assertTrue(useBy.getDayOfMonth() <= day.getDayOfMonth(), "never the day after");
      }
    }
  }

  /** CDC and FSIS: best within 12 months; none of the sources read goes beyond 18. */
  @Test
  void aYearIsUsual() {
    assertEquals(12, UseBy.USUAL_MONTHS);
    assertEquals(18, UseBy.MOST_MONTHS);
  }
}
