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
import java.util.Set;

/** Planned clock times beside the sections and in the clock's table. */
final class TimesView {
  /** Of more loads than this only the first is told, in a section of full width or half. */
  private static final int MOST_TOLD = 4;

  private static final int MOST_TOLD_IN_HALF = 2;
  private static final String MORE = " …";
  private static final Set<String> HALF = Set.of("before", "jars", "out");

  /** From its time on all jars can be tested, and any later time will do. */
  private static final String NEXT_DAY = "next-day";

  private final SectionTimes times;
  private final LocalDate day;
  private final Wording words;
  private final ClockTime clock;

  TimesView(SectionTimes times, LocalDate day, ClockTime clock) {
    this.times = times;
    this.day = day;
    this.words = clock.words();
    this.clock = clock;
  }

  /** {@code due}: a text for each section that has one; {@code starts} and {@code ends} by load. */
  Map<String, Object> view() {
    Map<String, Object> due = new LinkedHashMap<>();
    times
        .due()
        .forEach(
            (section, moments) -> {
              if (!moments.isEmpty()) {
                due.put(section, due(section, moments));
              }
            });
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("due", due);
    view.put("starts", times.starts().stream().map(this::about).toList());
    view.put("ends", times.ends().stream().map(this::about).toList());
    return view;
  }

  private String due(String section, List<ZonedDateTime> moments) {
    if (section.equals(NEXT_DAY)) {
      if (times.inTheMorning()) {
        return words.text("time.next-morning");
      }
      ZonedDateTime all = moments.get(moments.size() - 1);
      return words.text("time.from", Map.of("time", clock(all, day)));
    }
    int most = HALF.contains(section) ? MOST_TOLD_IN_HALF : MOST_TOLD;
    return words.text("time.about", Map.of("times", told(moments, most)));
  }

  private String about(ZonedDateTime moment) {
    return words.text("time.brief", Map.of("time", clock(moment, day)));
  }

  private String told(List<ZonedDateTime> moments, int most) {
    if (moments.size() > most) {
      return clock(moments.get(0), day) + MORE;
    }
    List<String> texts = new ArrayList<>();
    LocalDate on = day;
    for (ZonedDateTime moment : moments) {
      texts.add(clock(moment, on));
      on = moment.toLocalDate();
    }
    return String.join(", ", texts);
  }

  /** With its date where that is not the one that the reader thinks of. */
  private String clock(ZonedDateTime moment, LocalDate known) {
    LocalDate on = moment.toLocalDate();
    String time = clock.of(moment);
    return on.equals(known) ? time : words.date("day", on) + " " + time;
  }
}
