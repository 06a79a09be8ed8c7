package jarwright.day;

import jarwright.plan.OwnTime;
import jarwright.water.CirclePacking;
import jarwright.water.GuideLoads;
import jarwright.water.JarBook;
import java.util.List;

/** The figures that a day is reckoned from. */
public record DayBook(JarBook jars, CirclePacking packing, GuideLoads loads, TaskTimes times) {

  /** The same with a household's own times of hand work. */
  public DayBook with(List<OwnTime> own) {
    return new DayBook(jars, packing, loads, times.with(own));
  }
}
