package jarwright.pantry;

import java.util.Locale;

/**
 * What a jar shows, by the same word wherever it is shown; the most urgent first. Which word it is
 * {@link Advice} decides.
 */
public enum JarWord {
  /** Not to be eaten by anybody, wherever it is. */
  THROW_AWAY,
  /** Not for the shelf: to be canned again, frozen or refrigerated before a certain time. */
  RECAN,
  /** Out of the canner, and its seal cannot be told before it has cooled. */
  COOLING,
  /** It has cooled, and nobody has recorded yet whether it sealed. */
  TEST_SEAL,
  /** Another jar of its lot was spoiled, and this one has not been looked over yet. */
  DO_NOT_EAT_YET,
  /** It was planned and its day is past; nobody recorded what came of it. */
  NOT_RECORDED,
  /** Acid food from elsewhere that nobody vouches for. */
  UNVOUCHED,
  REFRIGERATOR,
  /** Past its use-by date, which is one of quality. */
  OVERDUE,
  /** To be used, of unknown age. */
  UNDATED,
  USE_FIRST,
  /** Due this month or next. */
  DUE_SOON,
  KEEPS,
  FREEZER,
  PLANNED,
  MISSING,
  TAKEN,
  TOSSED,
  RECANNED,
  UNFILLED,
  CANCELLED;

  /** As in {@code due-soon}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether such a jar, where it is in the house, may be handed out to be eaten. */
  public boolean mayBeEaten() {
    return compareTo(REFRIGERATOR) >= 0 && compareTo(FREEZER) <= 0;
  }

  /** Whether something is to be done about such a jar in the house, this month or next. */
  public boolean isDue() {
    return compareTo(KEEPS) < 0;
  }
}
