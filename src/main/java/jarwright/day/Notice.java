package jarwright.day;

import jarwright.lot.LotCode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Something that the cook should know of a day before it starts.
 *
 * @param lot the batch; empty where it is about the whole day
 * @param details what the words about it name, in order: names, whole numbers, dates, times of day,
 *     lengths, lists of volumes
 */
public record Notice(Kind kind, Optional<LotCode> lot, List<Object> details) {
  public Notice {
    details = List.copyOf(details);
  }

  /** What it is about. */
  public enum Kind {
    /** No start and no finish is given; details: the start that is planned with. */
    USUAL_START,
    /** The first task falls on an earlier date than the batches'; details: that date. */
    STARTS_DAY_BEFORE,
    /** Work of a day before falls into the night; details: that time, that date. */
    NIGHT_WORK,
    /** Cooked once for all loads; details: the pot's size. */
    COOKED_ONCE,
    /** Cooked once, in several pots at a time; details: pots, the sizes of the pots. */
    COOKED_IN_POTS,
    /** More than the pots hold; details: how often it is cooked, the sizes of the pots. */
    COOKED_IN_GOES,
    /**
     * Recipes that are never doubled, one after the other; details: recipes, minutes of cooking.
     */
    RECIPES_APART,
    /** The last jars come out on a later date than the batches'; details: that date. */
    OVER_MIDNIGHT,
    /** The clocks are changed while the work runs; details: the time it is, the time it becomes. */
    CLOCKS_CHANGE,
    /** Done later than asked for; details: the finish asked for, the finish planned. */
    LATE,
    /** More hours than a person should stand at a stove; details: hours. */
    LONG_DAY,
    /** Times to heat are wide, because power or energy is not given; details: the canner. */
    POWER_ASSUMED,
    /** No burner is left for a pot of jars: they are kept hot another way. */
    JARS_HEATED_ELSEWHERE,
    /** Nothing is known of a pressure canner's size; details: the canner, quarts it must hold. */
    CANNER_UNCOUNTED,
    /** A pressure canner with fewer jars than good practice; details: jars, jars of water. */
    SMALL_PRESSURE_LOAD,
    /** Empty places are filled with jars of water; details: jars of water. */
    WATER_JARS,
    /** The jars have to be measured; details: the tallest that can be covered. */
    MEASURE_JARS,
    /** The water could not be reckoned; details: what is missing. */
    WATER_UNMEASURED,
    /** Narrow jars would need fewer loads; details: places planned, places for narrow jars. */
    SLIM_JARS_FIT;

    /** Whether its details are numbers of jars. */
    boolean countsJars() {
      return this == SMALL_PRESSURE_LOAD || this == WATER_JARS;
    }

    /** As bundles and other programs write it. */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
