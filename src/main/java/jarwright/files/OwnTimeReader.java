package jarwright.files;

import jarwright.day.TaskKind;
import jarwright.plan.OwnTime;
import jarwright.problem.Problems;
import jarwright.quantity.Fraction;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how long one piece of hand work takes in the household. */
final class OwnTimeReader {
  static final List<String> KEYS = List.of("task", "of", "minutes", "minutes-each");

  private static final List<String> TASKS =
      Arrays.stream(TaskKind.values()).filter(TaskKind::isHandWork).map(TaskKind::id).toList();
  private static final Pattern SPAN =
      Pattern.compile("([0-9./]+)(?:\\s*(?:-|to)\\s*([0-9./]+))?(?:\\s*min(?:utes)?)?");
  private static final Fraction MOST = Fraction.of(600);
  private static final String EXAMPLE = "25, or 20 to 30";

  private final Fields fields;

  OwnTimeReader(Written.Keys written, Problems problems) {
    this.fields = new Fields(written, "a time", KEYS, Map.of(), problems);
  }

  /** The time, or none where its work or its minutes are not understood. */
  Optional<OwnTime> read() {
    fields.require("task", "write task: " + String.join(" or ", TASKS));
    fields.require("minutes", "write minutes: " + EXAMPLE);
    Optional<String> task = fields.word("task", Optional::of, TASKS);
    Optional<String> of = fields.plainWord("of");
    Optional<OwnTime.Span> fixed = fields.amount("minutes", OwnTimeReader::span, EXAMPLE);
    Optional<OwnTime.Span> each =
        fields.amount("minutes-each", OwnTimeReader::span, "0.5, or 1/2 to 1");
    if (task.isEmpty() || fixed.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new OwnTime(
            task.get(), of, fixed.get(), each, fields.places().getOrDefault("of", fields.place())));
  }

  private static OwnTime.Span span(String text) {
    Matcher matcher = SPAN.matcher(text.strip());
    if (!matcher.matches()) {
      throw new IllegalArgumentException("\"" + Fields.shown(text) + "\" is no span of minutes");
    }
    Fraction least = Fraction.parse(matcher.group(1));
    Fraction most = matcher.group(2) == null ? least : Fraction.parse(matcher.group(2));
    if (most.compareTo(MOST) > 0) {
      throw new IllegalArgumentException("\"" + Fields.shown(text) + "\" is longer than a day");
    }
    return new OwnTime.Span(least, most);
  }
}
