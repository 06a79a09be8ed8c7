package jarwright.day;

import jarwright.water.Estimate;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;

/**
 * A day at the stove with its times.
 *
 * @param date of its batches
 * @param start the day's minute 0, when hands begin on the canning day; in the kitchen's zone
 * @param ahead work of days before and the waits that it begins, earliest first
 * @param loads batch by batch; a task names its load by the place here, from 0
 * @param tasks in the order in which they start
 * @param hands pairs of hands
 * @param burners places on the stove; the canners have the first of them
 * @param canners names of the canners used, in the order of their burners
 * @param finish minutes to the last jar on the bench
 * @param finishRange the same if every estimate is as short as it may be, or as long
 * @param soonest minutes under which no order of the work would be done; the finish itself where
 *     that is proven to be the soonest
 * @param proven whether it is proven that nothing is done sooner, then waits less, then turns less
 *     from batch to batch
 * @param waiting minutes that filled loads wait for their canners, all together
 * @param rushes when two or more pairs of hands are needed at once
 */
public record DayPlan(
    LocalDate date,
    ZonedDateTime start,
    List<Ahead> ahead,
    List<PlannedLoad> loads,
    List<Task> tasks,
    int hands,
    int burners,
    List<String> canners,
    int finish,
    Estimate finishRange,
    int soonest,
    boolean proven,
    int waiting,
    List<Rush> rushes,
    List<Notice> notices) {
  public DayPlan {
    ahead = List.copyOf(ahead);
    loads = List.copyOf(loads);
    tasks = List.copyOf(tasks);
    canners = List.copyOf(canners);
    rushes = List.copyOf(rushes);
    notices = List.copyOf(notices);
  }

  /** The clock at a minute of the day. */
  public ZonedDateTime at(int minute) {
    return start.plusMinutes(minute);
  }

  /** Minutes that a better order of the work could save at the most. */
  public int gap() {
    return finish - soonest;
  }

  public int jars() {
    return loads.stream().mapToInt(l -> l.load().jars()).sum();
  }
}
