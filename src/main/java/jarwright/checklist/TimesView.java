package jarwright.checklist;

import jarwright.day.ClockTime;
import jarwright.day.SectionTimes;
import jarwright.page.Wording;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Planned clock times beside the sections and in the clock's table. */
final class TimesView {
  /** More loads than this are told by their first and last. */
  private static final int MOST_TOLD = 3;

  /** Its time is the earliest, and any later one will do. */
  private static final String NEXT_DAY = "next-day";

  private final SectionTimes times;
  private final LocalDate day;
  private final Wording words;

  TimesView(SectionTimes times, LocalDate day, Wording words) {
    this.times = times;
    this.day = day;
    this.words = words;
  }

  /** {@code due}: a text for each section that has one; {@code starts} and {@code ends} by load. */
  Map<String, Object> view() {
    Map<String, Object> due = new LinkedHashMap<>();
    times
        .due()
        .forEach(
            (section, moments) -> {
              if (!moments.isEmpty()) {
                String key = section.equals(NEXT_DAY) ? "time.from" : "time.about";
                due.put(section, words.text(key, Map.of("times", told(moments))));
              }
            });
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("due", due);
    view.put("starts", times.starts().stream().map(this::about).toList());
    view.put("ends", times.ends().stream().map(this::about).toList());
    return view;
  }

  private String about(ZonedDateTime moment) {
    return words.text("time.brief", Map.of("time", clock(moment, day)));
  }

  private String told(List<ZonedDateTime> moments) {
    int last = moments.size() - 1;
    List<ZonedDateTime> shown =
        moments.size() > MOST_TOLD ? List.of(moments.get(0), moments.get(last)) : moments;
    List<String> texts = new ArrayList<>();
    LocalDate on = day;
    for (ZonedDateTime moment : shown) {
      texts.add(clock(moment, on));
      on = moment.toLocalDate();
    }
    return String.join(moments.size() > MOST_TOLD ? " … " : ", ", texts);
  }

  /** With its date where that is not the one that the reader thinks of. */
  private String clock(ZonedDateTime moment, LocalDate known) {
    LocalDate on = moment.toLocalDate();
    String clock = ClockTime.of(moment);
    return on.equals(known) ? clock : words.date("day", on) + " " + clock;
  }
}
