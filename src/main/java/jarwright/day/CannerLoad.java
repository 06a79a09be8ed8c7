package jarwright.day;

import jarwright.batch.Batch;
import jarwright.water.Places;
import jarwright.water.WaterAdvice;

/**
 * One filling of a canner: jars of one batch, so that it never mixes processes.
 *
 * @param number of the load in its batch, from 1
 * @param of loads in the batch
 * @param jars with food
 * @param waterJars jars of plain water set in the empty places of a small load, so that nothing
 *     topples and the canner heats as it should
 * @param belowMinimum whether a pressure canner would hold fewer jars than good practice asks for
 */
public record CannerLoad(
    Batch batch,
    int number,
    int of,
    int jars,
    int waterJars,
    Places places,
    WaterAdvice water,
    boolean belowMinimum) {
  public CannerLoad {
    if (jars < 1 || waterJars < 0 || jars + waterJars > places.total()) {
      throw new IllegalArgumentException(
          jars + " jars and " + waterJars + " of water in " + places.total() + " places");
    }
  }

  /** Everything that stands in the canner. */
  public int standing() {
    return jars + waterJars;
  }
}
