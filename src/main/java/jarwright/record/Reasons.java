package jarwright.record;

import jarwright.page.Wording;
import jarwright.pantry.Jar;
import jarwright.pantry.Outcome;
import jarwright.pantry.Standing;
import jarwright.pantry.VerdictRule;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Why a jar's page says what it says: the rules behind its verdict, and what came later. */
final class Reasons {
  private final Wording words;
  private final Function<String, Optional<VerdictRule>> rules;
  private final OffsetDateTime now;

  /**
   * @param rules a rule by the name that the ledger remembers
   */
  Reasons(Wording words, Function<String, Optional<VerdictRule>> rules, OffsetDateTime now) {
    this.words = words;
    this.rules = rules;
    this.now = now;
  }

  /** Each with {@code text}, no text twice, and {@code sources}, of which there may be none. */
  List<Map<String, Object>> of(Jar jar) {
    Map<String, Set<String>> reasons = new LinkedHashMap<>();
    jar.doubt()
        .filter(d -> jar.standing().isHere())
        .ifPresent(
            d ->
                say(
                    reasons,
                    "record.why.doubt",
                    Map.of(
                        "jar", d.cause().toString(),
                        "date", day(d.since()),
                        "seen", d.seen().isEmpty() ? "–" : d.seen())));
    Standing standing = jar.standing();
    boolean late = !jar.standingAt(now).kind().equals(standing.kind());
    if (late && standing instanceof Standing.InRefrigerator cold) {
      String date = words.date("long", cold.eatBy());
      say(reasons, "record.why.cold-late", Map.of("date", date));
    }
    if (late && standing instanceof Standing.ToRecan recan) {
      say(reasons, "record.why.recan-late", Map.of("date", day(recan.by())));
    }
    if (standing instanceof Standing.Tossed tossed) {
      String why = tossed.why().isEmpty() ? "–" : tossed.why();
      say(reasons, "record.why.tossed", Map.of("why", why));
    }
    jar.outcome().ifPresent(o -> o.because().forEach(id -> addRule(reasons, id)));
    if (reasons.isEmpty() && standing instanceof Standing.ToThrowAway) {
      say(reasons, "record.why.later", Map.of());
    }
    if (!jar.facts().madeHere()) {
      say(reasons, "record.why.unvouched", Map.of());
    }
    return reasons.entrySet().stream().map(r -> reason(r.getKey(), r.getValue())).toList();
  }

  private void say(Map<String, Set<String>> reasons, String key, Map<String, Object> values) {
    reasons.putIfAbsent(words.text(key, values), new LinkedHashSet<>());
  }

  /** What a rule says, with its source; one no longer in the table keeps its name alone. */
  private void addRule(Map<String, Set<String>> reasons, String id) {
    Optional<VerdictRule> rule = rules.apply(id);
    String finding = rule.map(r -> r.finding().word()).orElse(id);
    String key = "record.finding." + finding;
    Set<String> sources =
        reasons.computeIfAbsent(
            words.has(key) ? words.text(key) : finding, t -> new LinkedHashSet<>());
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
    line(lines, "seal", words.text(outcome.sealed() ? "record.sealed" : "record.not-sealed"));
    line(lines, "lost", words.text("record.lost." + outcome.lost().word()));
    line(lines, "load", String.valueOf(outcome.load()));
    line(lines, "note", outcome.note());
  }

  private void line(List<Map<String, Object>> lines, String key, String value) {
    if (!value.isEmpty()) {
      lines.add(new Line(words.text("record.out." + key), value).view());
    }
  }

  private static Map<String, Object> reason(String text, Set<String> sources) {
    Map<String, Object> reason = new LinkedHashMap<>();
    reason.put("text", text);
    reason.put("sources", List.copyOf(sources));
    return reason;
  }

  private String day(OffsetDateTime time) {
    return words.date("long", time.toLocalDate());
  }
}
