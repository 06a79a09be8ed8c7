package jarwright.cli;

import jarwright.lot.JarId;
import jarwright.pantry.Entry;
import jarwright.pantry.Finding;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.Judged;
import jarwright.pantry.LoadRun;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Observed;
import jarwright.pantry.Outcome;
import jarwright.pantry.Pantry;
import jarwright.pantry.Required;
import jarwright.pantry.Sealed;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How loads compare with the tested process, and each jar's verdict, as lines of text. */
final class SealText {
  private final Pantry pantry;
  private final Style style;
  private final VerdictText verdicts;
  private final StringBuilder out = new StringBuilder();

  /**
   * @param pantry as it was before
   */
  SealText(Pantry pantry, Units units) {
    this.pantry = pantry;
    this.style = Style.english(units);
    this.verdicts = new VerdictText(units);
  }

  /** The lines, each ended. */
  String of(Sealed sealed) {
    String header = "";
    for (Entry entry : sealed.entries()) {
      LotFacts facts = pantry.lot(entry.lot().orElseThrow()).orElseThrow().facts();
      if (entry.what() instanceof LoadRun run) {
        load(entry, run, facts);
        header = header(entry, run.load());
      } else if (entry.what() instanceof Outcome outcome) {
        if (!header.equals(header(entry, outcome.load()))) {
          header = header(entry, outcome.load());
          line(header + ", whose process was recorded before");
        }
        JarId first = entry.lot().get().jar(entry.jars().stream().findFirst().orElseThrow());
        jars(entry.jars(), sealed.verdicts().get(first), outcome, facts);
      } else {
        line(entry.lot().get() + "/" + entry.jars() + "  never filled");
      }
    }
    return out.toString();
  }

  private static String header(Entry entry, int load) {
    return entry.lot().orElseThrow() + ", load " + load;
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private void load(Entry entry, LoadRun run, LotFacts facts) {
    line(entry.lot().orElseThrow() + "  " + facts.name() + ", " + facts.pack() + " pack, "
        + facts.jar());
    line("load " + run.load() + ", jars " + entry.jars());
    Required required = run.required();
    Observed seen = run.seen();
    line("  tested process  " + asked(required));
    line("  this load       " + clock(seen));
    Set<Finding> against = seen.against(required);
    if (against.isEmpty()) {
      line("  processed as tested");
    } else {
      line("  NOT PROCESSED AS TESTED: every jar of the load fails, sealed or not");
      against.forEach(f -> line("    " + verdicts.finding(f) + shortBy(f, required, seen)));
    }
  }

  private String asked(Required required) {
    String held =
        required.pressure().map(p -> " at no less than " + p.text(style)).orElse(" at a full boil");
    return required.minutes() + " min" + held + (required.acid() ? ", acid in every jar" : "");
  }

  private String clock(Observed seen) {
    List<String> parts = new ArrayList<>();
    parts.add(time(seen.fullRunFrom()) + " to " + time(seen.end()));
    seen.fullRun().ifPresent(d -> parts.add(minutes(d)));
    if (seen.restarts() > 0) {
      parts.add("begun again " + seen.restarts() + (seen.restarts() == 1 ? " time" : " times"));
    }
    seen.lowest().ifPresent(p -> parts.add("lowest " + p.text(style)));
    return String.join(", ", parts);
  }

  private static String time(Optional<OffsetDateTime> time) {
    return time.map(VerdictText::minute).orElse("?");
  }

  private static String minutes(Duration run) {
    String seconds = run.toSecondsPart() == 0 ? "" : " " + run.toSecondsPart() + " s";
    return run.toMinutes() + " min" + seconds;
  }

  private static String shortBy(Finding finding, Required required, Observed seen) {
    return finding == Finding.MINUTES_SHORT
        ? " It lacks "
            + minutes(Duration.ofMinutes(required.minutes()).minus(seen.fullRun().orElseThrow()))
            + "."
        : "";
  }

  private void jars(JarNumbers jars, Judged judged, Outcome outcome, LotFacts facts) {
    List<String> deed = verdicts.deed(judged.verdict(), facts.shelf(), facts.useBy());
    String name = "  jar" + (jars.size() == 1 ? " " : "s ") + jars;
    line(name + "  " + deed.get(0));
    deed.stream().skip(1).forEach(d -> line("    " + d));
    judged.because().forEach(rule -> line("    " + verdicts.because(rule)));
    if (!outcome.note().isEmpty()) {
      line("    note: " + outcome.note());
    }
  }
}
