package jarwright.pantry;

import jarwright.problem.Nearest;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What can be found of a load or a jar that a rule has an answer to. */
public enum Finding {
  /** Nothing else was found. */
  SOUND,
  /** The last unbroken run was shorter than the tested process, by whatever little. */
  MINUTES_SHORT,
  /** Start, last start or end is not known, so the minutes cannot be shown. */
  CLOCK_NOT_RECORDED,
  /** Boil or pressure did not hold, and the time was not started again. */
  HEAT_LOST,
  HEAT_NOT_RECORDED,
  /** The gauge was seen below the table, and the time was not started again. */
  PRESSURE_LOW,
  VENTING_SKIPPED,
  VENTING_NOT_RECORDED,
  ACID_LEFT_OUT,
  ACID_NOT_RECORDED,
  /** The dial gauge was not tested within a year before the day. */
  GAUGE_NOT_TESTED,
  GAUGE_TEST_NOT_RECORDED,
  /** A pressure canner was cooled or opened sooner than it does by itself. */
  COOLING_FORCED,
  LIDS_UNCOVERED,
  /** A larger jar than the time is for. */
  JAR_LARGER,
  /** Packed raw where the process is for hot food, or the other way round. */
  PACKED_OTHERWISE,
  RECIPE_CHANGED,
  /** Signs of spoilage, as {@link Sign}. */
  LEAKS,
  BULGES,
  SPURTS,
  SMELL,
  MOLD,
  COLOR,
  NOT_SEALED,
  /** Could be canned again, were there a tested way to do so with this food. */
  NO_HOT_PACK,
  SOME_LOST,
  HALF_LOST,
  /** The canner's water was cloudy, or nobody looked, and this jar has lost liquid. */
  CLOUDY_AND_LOW,
  /** The canner's water was cloudy, or nobody looked, and no jar of the load has lost any. */
  CLOUDY_NONE_LOW;

  /** As the table of rules writes it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Reads {@link #word}.
   *
   * @throws IllegalArgumentException naming the text and the words there are
   */
  public static Finding parse(String text) {
    List<String> words = Arrays.stream(values()).map(Finding::word).toList();
    int found = words.indexOf(text);
    if (found < 0) {
      throw new IllegalArgumentException(
          "\"" + Shown.of(text) + "\" is no finding; " + Nearest.remedy(text, words));
    }
    return values()[found];
  }
}
