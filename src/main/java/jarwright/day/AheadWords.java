package jarwright.day;

import jarwright.batch.Batch;
import jarwright.quantity.MeasuredText;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is done on days before, in words: when, for which food, how long it waits. */
public final class AheadWords {
  /** Minutes from which a wait ends on a day rather than at a time. */
  private static final long DAYS = 48 * 60;

  /** Stands for the waiting step's own words, which keep their amounts apart. */
  private static final String STEP = "\n";

  private final StepTexts steps;

  public AheadWords(StepTexts steps) {
    this.steps = steps;
  }

  /**
   * A line of the work ahead.
   *
   * @param when hands begin, with weekday and date
   * @param letter of the batch
   * @param what in whole sentences
   * @param caution what the waiting step warns of; may be empty
   */
  public record Row(String when, String letter, Line what, Line caution) {}

  /** The lines of a day, earliest first. */
  public List<Row> of(DayPlan day) {
    return day.ahead().stream().map(a -> row(day, a)).toList();
  }

  private Row row(DayPlan day, Ahead ahead) {
    Batch batch =
        day.loads().stream()
            .map(l -> l.load().batch())
            .filter(b -> b.lot().equals(ahead.lot()))
            .findFirst()
            .orElseThrow();
    ClockTime clock = new ClockTime(batch.kitchen().clock(), steps.words());
    boolean hours = Duration.between(ahead.waits(), ahead.until()).toMinutes() < DAYS;
    String until =
        hours
            ? clock.of(ahead.until(), ahead.waits().toLocalDate())
            : steps.words().date("day", ahead.until().toLocalDate());
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("step", STEP);
    values.put("until", until);
    long work = Duration.between(ahead.start(), ahead.waits()).toMinutes();
    if (work > 0) {
      values.put("n", Math.toIntExact(work));
    }
    return new Row(
        steps.words().date("weekday-day", ahead.start().toLocalDate())
            + ", "
            + clock.of(ahead.start()),
        String.valueOf(ahead.lot().letter()),
        around(
            steps.words().text(work > 0 ? "day.ahead.work" : "day.ahead.wait", values),
            steps.line(batch, ahead.step())),
        steps.caution(batch, ahead.step()));
  }

  private static Line around(String words, Line step) {
    int at = words.indexOf(STEP);
    List<MeasuredText.Run> runs = new ArrayList<>();
    runs.add(new MeasuredText.Run(words.substring(0, at), false));
    runs.addAll(step.runs());
    runs.add(new MeasuredText.Run(words.substring(at + STEP.length()), false));
    return new Line(runs);
  }
}
