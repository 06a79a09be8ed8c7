package jarwright.cli;

import jarwright.lot.LotCode;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How loads compare with the tested process, and each jar's verdict, as lines of text. */
final class SealText {
  private static final String DEEPER = "      ";

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
    Map<Judged, JarNumbers> alike = new LinkedHashMap<>();
    for (int i = 0; i < sealed.entries().size(); i++) {
      Entry entry = sealed.entries().get(i);
      LotCode lot = entry.lot().orElseThrow();
      LotFacts facts = pantry.lot(lot).orElseThrow().facts();
      if (entry.what() instanceof LoadRun run) {
        load(lot + ", load " + run.load() + ", jars " + entry.jars(), run, facts);
        header = header(entry, run.load());
      } else if (entry.what() instanceof Outcome outcome) {
        if (!header.equals(header(entry, outcome.load()))) {
          header = header(entry, outcome.load());
          line(header + ", whose process was recorded before");
        }
        Judged judged = sealed.verdicts().get(lot.jar(entry.jars().stream().min().orElseThrow()));
        alike.merge(judged, entry.jars(), JarNumbers::plus);
        boolean last =
            i + 1 == sealed.entries().size()
                || !(sealed.entries().get(i + 1).what() instanceof Outcome next)
                || next.load() != outcome.load()
                || !sealed.entries().get(i + 1).lot().equals(entry.lot());
        if (last) {
          alike.forEach((verdict, jars) -> jars(jars, verdict, facts));
          alike.clear();
        }
      } else {
        line(lot + "/" + entry.jars() + "  never filled");
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

  private void load(String heading, LoadRun run, LotFacts facts) {
    line(heading);
    line("  " + facts.name() + ", " + facts.pack() + " pack, " + facts.jar());
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

  private void jars(JarNumbers jars, Judged judged, LotFacts facts) {
    List<String> deed = verdicts.deed(judged.verdict(), facts.shelf(), facts.useBy());
    String name = "  jar" + (jars.size() == 1 ? " " : "s ") + jars + ": ";
    out.append(Indented.of(name, DEEPER, deed.get(0)));
    deed.stream().skip(1).forEach(d -> out.append(Indented.of(DEEPER, DEEPER, d)));
    verdicts.because(judged).forEach(b -> out.append(Indented.of(DEEPER, DEEPER + "  ", b)));
  }
}
