package jarwright.pantry;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.Locale;

/** How soon a jar in the house wants something done, the most urgent first. */
public enum Urgency {
  THROW_AWAY,
  RECAN,
  /** Its seal is to be tested, now or when it has cooled. */
  COOLING,
  LOOK_AT,
  /** From an old list: nobody knows how it was processed. */
  UNVOUCHED,
  REFRIGERATOR,
  OVERDUE,
  USE_FIRST,
  /** Due this month or next. */
  DUE_SOON,
  KEEPS,
  FREEZER;

  /** As in {@code due-soon}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The urgency of a jar that is in the house.
   *
   * @throws IllegalArgumentException where the jar is not in the house
   */
  public static Urgency of(Jar jar, OffsetDateTime now) {
    Standing standing = jar.standingAt(now);
    if (!standing.isHere()) {
      throw new IllegalArgumentException(jar.id() + " is " + standing.kind().text());
    }
    return switch (standing.kind()) {
      case TO_THROW_AWAY -> THROW_AWAY;
      case TO_RECAN -> RECAN;
      case COOLING -> jar.doubt().isPresent() ? LOOK_AT : COOLING;
      case IN_REFRIGERATOR -> jar.doubt().isPresent() ? LOOK_AT : REFRIGERATOR;
      case IN_FREEZER -> jar.doubt().isPresent() ? LOOK_AT : FREEZER;
      default -> jar.doubt().isPresent() ? LOOK_AT : onShelf(jar, now.toLocalDate());
    };
  }

  private static Urgency onShelf(Jar jar, LocalDate today) {
    if (!jar.facts().madeHere()) {
      return UNVOUCHED;
    }
    if (jar.facts().useBy().isEmpty()) {
      return USE_FIRST;
    }
    LocalDate useBy = jar.facts().useBy().get();
    if (useBy.isBefore(today)) {
      return OVERDUE;
    }
    if (jar.isUsedFirst()) {
      return USE_FIRST;
    }
    return useBy.isAfter(YearMonth.from(today).plusMonths(1).atEndOfMonth()) ? KEEPS : DUE_SOON;
  }
}
