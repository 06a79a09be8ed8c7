package jarwright.cli;

import jarwright.lot.LotCode;
import jarwright.pantry.Advice;
import jarwright.pantry.Entry;
import jarwright.pantry.Finding;
import jarwright.pantry.Grade;
import jarwright.pantry.Jar;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.JarStep;
import jarwright.pantry.JarWord;
import jarwright.pantry.Judged;
import jarwright.pantry.LoadRun;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Observed;
import jarwright.pantry.Outcome;
import jarwright.pantry.Pantry;
import jarwright.pantry.Required;
import jarwright.pantry.Sealed;
import jarwright.pantry.VerdictRules;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How loads compare with the tested process, and each jar's verdict, as lines of text. */
final class SealText {
  private static final String DEEPER = "      ";
  private static final Set<JarWord> KEPT_FROM_EATING =
      EnumSet.of(JarWord.THROW_AWAY, JarWord.DO_NOT_EAT_YET);

  private final Pantry before;
  private final Pantry after;
  private final OffsetDateTime now;
  private final Style style;
  private final VerdictText verdicts;
  private final JarText text;
  private final StringBuilder out = new StringBuilder();

  /** The loads of one lot, and what is recorded of each. */
  private record Part(LotCode lot, int load) {}

  /**
   * @param before the stock as it is
   * @param after as it will be with what was told
   */
  SealText(Pantry before, Pantry after, VerdictRules rules, Units units, OffsetDateTime now) {
    this.before = before;
    this.after = after;
    this.now = now;
    this.style = Style.english(units);
    this.verdicts = new VerdictText(units);
    this.text = new JarText(verdicts, rules, now);
  }

  /** The lines, each ended. */
  String of(Sealed sealed) {
    Map<Part, List<Entry>> parts = new LinkedHashMap<>();
    for (Entry entry : sealed.entries()) {
      LotCode lot = entry.lot().orElseThrow();
      if (entry.what() instanceof LoadRun run) {
        parts.computeIfAbsent(new Part(lot, run.load()), p -> new ArrayList<>()).add(entry);
      } else if (entry.what() instanceof Outcome outcome) {
        parts.computeIfAbsent(new Part(lot, outcome.load()), p -> new ArrayList<>()).add(entry);
      } else if (entry.what() instanceof JarStep) {
        line(lot + "/" + entry.jars() + "  never filled");
      }
    }
    parts.forEach((part, entries) -> part(part, entries, sealed));
    return out.toString();
  }

  private void part(Part part, List<Entry> entries, Sealed sealed) {
    LotFacts facts = before.lot(part.lot()).orElseThrow().facts();
    Entry first = entries.get(0);
    if (first.what() instanceof LoadRun run) {
      line(part.lot() + ", load " + part.load() + ", jars " + first.jars());
      load(run, facts);
    } else {
      line(part.lot() + ", load " + part.load() + ", whose process was recorded before");
    }
    Map<Judged, JarNumbers> alike = new LinkedHashMap<>();
    for (Entry entry : entries) {
      if (entry.what() instanceof Outcome) {
        entry.jars().stream()
            .forEach(
                n ->
                    alike.merge(
                        sealed.verdicts().get(part.lot().jar(n)),
                        JarNumbers.of(n),
                        JarNumbers::plus));
      }
    }
    alike.forEach((judged, jars) -> jars(part.lot(), jars, judged, facts));
    if (first.what() instanceof LoadRun run) {
      cooling(part.lot(), sealed.cooling(first), run);
    }
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private void load(LoadRun run, LotFacts facts) {
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
    String acid =
        switch (required.acid()) {
          case NONE -> "";
          case EACH_JAR -> ", acid in every jar";
          case IN_RECIPE -> ", the recipe's acid in full";
        };
    return required.minutes() + " min" + held + acid;
  }

  private String clock(Observed seen) {
    List<String> parts = new ArrayList<>();
    parts.add(time(seen.fullRunFrom()) + " to " + time(seen.end()));
    seen.fullRun().ifPresent(d -> parts.add(minutes(d)));
    if (seen.restarts() > 0) {
      parts.add("started over " + seen.restarts() + (seen.restarts() == 1 ? " time" : " times"));
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
    Duration asked = Duration.ofMinutes(required.minutes());
    return finding == Finding.MINUTES_SHORT
        ? " It was " + minutes(asked.minus(seen.fullRun().orElseThrow())) + " short."
        : "";
  }

  private static String name(JarNumbers jars) {
    return "  jar" + (jars.size() == 1 ? " " : "s ") + jars + ": ";
  }

  private void jars(LotCode lot, JarNumbers jars, Judged judged, LotFacts facts) {
    Optional<Jar> other = jars.stream().boxed().findFirst().flatMap(n -> after.jar(lot.jar(n)));
    boolean told = judged.verdict().grade() == Grade.THROW_AWAY;
    List<String> deed =
        other
            .filter(j -> !told && KEPT_FROM_EATING.contains(Advice.word(j, now)))
            .map(this::other)
            .orElseGet(() -> verdicts.deed(judged.verdict(), facts.shelf(), facts.useBy()));
    out.append(Indented.of(name(jars), DEEPER, deed.get(0)));
    deed.stream().skip(1).forEach(d -> out.append(Indented.of(DEEPER, DEEPER, d)));
    verdicts.because(judged).forEach(b -> out.append(Indented.of(DEEPER, DEEPER + "  ", b)));
  }

  /** What another jar of the lot does to one that came out well. */
  private List<String> other(Jar jar) {
    List<String> lines = new ArrayList<>(List.of(text.says(jar).toUpperCase(Locale.ROOT)));
    lines.addAll(text.reasons(jar));
    lines.add("jarwright trace " + jar.id().lot() + " says what to do.");
    return lines;
  }

  private void cooling(LotCode lot, JarNumbers jars, LoadRun run) {
    if (jars.isEmpty()) {
      return;
    }
    OffsetDateTime from = run.lookFrom().orElseThrow();
    boolean cooled = !now.isBefore(from);
    String what =
        cooled
            ? "COOLED. Test the seals now, and record them: jarwright seal " + lot
            : "COOLING. Leave them and their bands alone. Test the seals from "
                + VerdictText.minute(from)
                + " on; then: jarwright seal "
                + lot;
    out.append(Indented.of(name(jars), DEEPER, what));
  }
}
