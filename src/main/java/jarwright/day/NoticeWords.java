package jarwright.day;

import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.quantity.Length;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import jarwright.quantity.Volume;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a day's notices say, in the words of one language. */
public final class NoticeWords {
  private final Wording words;

  public NoticeWords(Wording words) {
    this.words = words;
  }

  /** A sentence each; a batch is named by its lot's letter where the day has several. */
  public List<String> of(DayPlan day) {
    boolean several = day.loads().stream().map(l -> l.load().batch()).distinct().count() > 1;
    Style style = UnitWords.style(day.loads().get(0).load().batch().kitchen().units(), words);
    return day.notices().stream()
        .map(
            n ->
                n.lot().filter(lot -> several).map(lot -> lot.letter() + ": ").orElse("")
                    + sentence(n, style))
        .distinct()
        .toList();
  }

  private String sentence(Notice notice, Style style) {
    Map<String, Object> values = new LinkedHashMap<>();
    for (Object detail : notice.details()) {
      values.put("d" + (values.size() + 1), shown(detail, style));
    }
    return words.text("day.notice." + notice.kind().id(), values);
  }

  /** She knows her pots in the unit that she gave them in. */
  private String asWritten(Volume pot) {
    Units units = pot.unit().isMetric() ? Units.METRIC : Units.US;
    return pot.text(UnitWords.style(units, words), Rounding.NEAREST);
  }

  private Object shown(Object detail, Style style) {
    if (detail instanceof LocalDate date) {
      return words.date("long", date);
    }
    if (detail instanceof LocalTime time) {
      return ClockTime.of(time);
    }
    if (detail instanceof List<?> pots) {
      return pots.stream().map(pot -> asWritten((Volume) pot)).collect(Collectors.joining(", "));
    }
    // The tallest that the water covers: a jar measured against it is never too tall.
    return detail instanceof Length tallest ? tallest.text(style, Rounding.DOWN) : detail;
  }
}
