package jarwright.day;

import jarwright.process.Method;
import java.util.List;
import java.util.stream.Stream;

/** Captions of what is written in beside the clock, for each load. */
final class ClockFields {
  private ClockFields() {}

  static List<String> boiling(StepWords words) {
    return worded(words, "boil", "start", "end");
  }

  static List<String> pressure(Method method, StepWords words) {
    return worded(words, "vent", "start", "end", method == Method.DIAL_GAUGE ? "lowest" : "moving");
  }

  private static List<String> worded(StepWords words, String... keys) {
    return Stream.of(keys).map(k -> words.text("field." + k)).toList();
  }
}
