package jarwright.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How the household reads a clock: twice twelve hours a day, or twenty-four. */
public enum ClockHours {
  TWELVE("12h"),
  TWENTY_FOUR("24h");

  private final String id;

  ClockHours(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }

  /** What is usual where the paper is sold. */
  public static ClockHours usualWith(Paper paper) {
    return paper == Paper.LETTER ? TWELVE : TWENTY_FOUR;
  }

  public static Optional<ClockHours> named(String id) {
    return Arrays.stream(values()).filter(c -> c.id.equals(id)).findFirst();
  }

  public static List<String> ids() {
    return Arrays.stream(values()).map(ClockHours::id).toList();
  }
}
