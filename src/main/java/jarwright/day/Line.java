package jarwright.day;

import jarwright.quantity.MeasuredText;
import java.util.List;
import java.util.stream.Collectors;

/** One line of a checklist, its amounts apart from its words. */
public record Line(List<MeasuredText.Run> runs) {
  public Line {
    runs = List.copyOf(runs);
  }

  /** The line as one text. */
  public String text() {
    return runs.stream().map(MeasuredText.Run::text).collect(Collectors.joining());
  }
}
