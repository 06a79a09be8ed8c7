package jarwright.record;

import jarwright.ask.Untested;
import jarwright.page.Wording;
import jarwright.pantry.Advice;
import jarwright.pantry.Doubt;
import jarwright.pantry.Jar;
import jarwright.pantry.Origin;
import jarwright.pantry.Outcome;
import jarwright.pantry.Reason;
import jarwright.pantry.Spoiled;
import jarwright.pantry.Standing;
import jarwright.pantry.VerdictRule;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Words why a jar shows what it shows: the reason that decides first. */
public final class Reasons {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final Wording words;
  private final Function<String, Optional<VerdictRule>> rules;

  /**
   * @param rules a rule by the name that the ledger remembers
   */
  public Reasons(Wording words, Function<String, Optional<VerdictRule>> rules) {
    this.words = words;
    this.rules = rules;
  }

  /**
   * A reason in words.
   *
   * @param sources none where it needs none
   */
  public record Told(String text, List<String> sources) {
    public Told {
      sources = List.copyOf(sources);
    }

    Map<String, Object> view() {
      Map<String, Object> view = new LinkedHashMap<>();
      view.put("text", text);
      view.put("sources", sources);
      return view;
    }
  }

  /** No text twice. */
  public List<Told> of(Advice advice) {
    Map<String, Set<String>> told = new LinkedHashMap<>();
    advice.reasons().forEach(r -> add(r, told));
    return told.entrySet().stream()
        .map(t -> new Told(t.getKey(), List.copyOf(t.getValue())))
        .toList();
  }

  private void add(Reason reason, Map<String, Set<String>> told) {
    if (reason instanceof Reason.CameOut out) {
      out.outcome().because().forEach(id -> addRule(told, id));
    } else if (reason instanceof Reason.From from
        && from.origin() instanceof Origin.Refused refused) {
      Untested.Told untested = refused.untested().told(words.language());
      String text =
          words.text(
              "says.why.from.refused", Map.of("what", untested.what(), "why", untested.why()));
      say(told, text).add(refused.untested().source().place());
    } else {
      say(told, text(reason));
    }
  }

  private static Set<String> say(Map<String, Set<String>> told, String text) {
    return told.computeIfAbsent(text, t -> new LinkedHashSet<>());
  }

  private String text(Reason reason) {
    if (reason instanceof Reason.FoundSpoiled found) {
      return words.text(
          "says.why.found-spoiled",
          Map.of("date", day(found.since()), "seen", seen(words, found.what())));
    }
    if (reason instanceof Reason.TurnedUp up) {
      return words.text("says.why.turned-up", Map.of("date", day(up.since())));
    }
    if (reason instanceof Reason.OfLot of) {
      return ofLot(of.doubt());
    }
    if (reason instanceof Reason.Late late) {
      return late(late.before());
    }
    if (reason instanceof Reason.ThrownAway gone) {
      return words.text("says.why.thrown-away", Map.of("why", said(gone.tossed().why())));
    }
    if (reason instanceof Reason.Withdrawn back) {
      return words.text(
          "says.why.withdrawn",
          Map.of(
              "date", day(back.since()), "back", day(back.takenBack()), "why", said(back.why())));
    }
    return from(((Reason.From) reason).origin());
  }

  private String ofLot(Doubt doubt) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("jar", doubt.cause().toString());
    values.put("date", day(doubt.since()));
    values.put("seen", seen(words, doubt.what()));
    if (doubt.kind() == Doubt.Kind.WHOLE_LOT) {
      values.put("cause", doubt.what().cause());
    }
    return words.text("says.why.of-lot." + doubt.kind().word(), values);
  }

  private String late(Standing before) {
    return before instanceof Standing.ToRecan recan
        ? words.text(
            "says.why.late.recan",
            Map.of(
                "date",
                words.text(
                    "record.moment",
                    Map.of("date", day(recan.by()), "time", CLOCK.format(recan.by())))))
        : words.text(
            "says.why.late.refrigerator",
            Map.of("date", words.date("long", ((Standing.InRefrigerator) before).eatBy())));
  }

  private String from(Origin origin) {
    if (origin instanceof Origin.Unsafe unsafe) {
      return words.text("says.why.from." + unsafe.lack().word());
    }
    if (origin instanceof Origin.ByWord by) {
      return words.text(
          "says.why.from.by-word",
          Map.of("who", by.vouched().who(), "source", by.vouched().source()));
    }
    return words.text("says.why.from.unvouched");
  }

  /** What was found of a spoiled jar: its signs, then what was said of it. */
  public static String seen(Wording words, Spoiled what) {
    String told =
        Stream.concat(
                what.signs().stream().map(s -> words.text("says.sign." + s.word())),
                Stream.of(what.seen()).filter(s -> !s.isEmpty()))
            .collect(Collectors.joining(", "));
    return told.isEmpty() ? words.text("says.no-words") : told;
  }

  private String said(String text) {
    return text.isEmpty() ? words.text("says.no-words") : text;
  }

  /** What a rule says, with its source; one no longer in the table keeps its name alone. */
  private void addRule(Map<String, Set<String>> told, String id) {
    Optional<VerdictRule> rule = rules.apply(id);
    String finding = rule.map(r -> r.finding().word()).orElse(id);
    String key = "record.finding." + finding;
    Set<String> sources = say(told, words.has(key) ? words.text(key) : finding);
    rule.map(VerdictRule::source).filter(s -> !s.isEmpty()).ifPresent(sources::add);
  }

  /** How a jar came out, as lines; none before it has. */
  List<Map<String, Object>> outcome(Jar jar) {
    List<Map<String, Object>> lines = new ArrayList<>();
    jar.outcome().ifPresent(o -> add(lines, o));
    return lines;
  }

  private void add(List<Map<String, Object>> lines, Outcome outcome) {
    line(lines, "verdict", words.text("record.verdict." + outcome.verdict().grade().word()));
    switch (outcome.sealed()) {
      case YES -> line(lines, "seal", words.text("record.sealed"));
      case NO -> line(lines, "seal", words.text("record.not-sealed"));
      case BLANK -> {}
    }
    outcome.lost().ifPresent(l -> line(lines, "lost", words.text("record.lost." + l.word())));
    line(lines, "load", String.valueOf(outcome.load()));
    line(lines, "note", outcome.note());
  }

  private void line(List<Map<String, Object>> lines, String key, String value) {
    if (!value.isEmpty()) {
      lines.add(new Line(words.text("record.out." + key), value).view());
    }
  }

  private String day(OffsetDateTime time) {
    return words.date("long", time.toLocalDate());
  }
}
