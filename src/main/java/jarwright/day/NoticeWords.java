package jarwright.day;

import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.plan.Kitchen;
import jarwright.quantity.Length;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import jarwright.quantity.Volume;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What a day's notices say, in the words of one language. */
public final class NoticeWords {
  private final Wording words;

  public NoticeWords(Wording words) {
    this.words = words;
  }

  /**
   * A sentence each, said once; the batches that it is for are named by their letters where the day
   * has several.
   */
  public List<String> of(DayPlan day) {
    Kitchen kitchen = day.loads().get(0).load().batch().kitchen();
    long batches = day.loads().stream().map(l -> l.load().batch()).distinct().count();
    Map<String, Set<String>> said = new LinkedHashMap<>();
    for (Notice notice : day.notices()) {
      Set<String> letters =
          said.computeIfAbsent(sentence(notice, kitchen), s -> new LinkedHashSet<>());
      notice.lot().ifPresent(lot -> letters.add(String.valueOf(lot.letter())));
    }
    List<String> all = new ArrayList<>();
    said.forEach(
        (sentence, letters) ->
            all.add(
                batches > 1 && !letters.isEmpty()
                    ? String.join(", ", letters) + ": " + sentence
                    : sentence));
    return all;
  }

  private String sentence(Notice notice, Kitchen kitchen) {
    Map<String, Object> values = new LinkedHashMap<>();
    for (Object detail : notice.details()) {
      Object shown = notice.kind().countsJars() ? jars(detail) : shown(detail, kitchen);
      values.put("d" + (values.size() + 1), shown);
    }
    return words.text("day.notice." + notice.kind().id(), values);
  }

  private String jars(Object count) {
    return words.count("day.jars", (Integer) count);
  }

  /** She knows her pots in the unit that she gave them in. */
  private String asWritten(Volume pot) {
    Units units = pot.unit().isMetric() ? Units.METRIC : Units.US;
    return pot.text(UnitWords.style(units, words), Rounding.NEAREST);
  }

  private Object shown(Object detail, Kitchen kitchen) {
    if (detail instanceof LocalDate date) {
      return words.date("long", date);
    }
    if (detail instanceof LocalTime time) {
      return new ClockTime(kitchen.clock(), words).of(time);
    }
    if (detail instanceof List<?> pots) {
      return pots.stream().map(pot -> asWritten((Volume) pot)).collect(Collectors.joining(", "));
    }
    Style style = UnitWords.style(kitchen.units(), words);
    // The tallest that the water covers: a jar measured against it is never too tall.
    return detail instanceof Length tallest ? tallest.text(style, Rounding.DOWN) : detail;
  }
}
