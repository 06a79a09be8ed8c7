package jarwright.record;

import jarwright.page.Wording;
import jarwright.pantry.Jar;
import jarwright.pantry.Outcome;
import jarwright.pantry.Standing;
import jarwright.pantry.VerdictRule;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  /** Each with {@code text} and {@code source}, which may be empty. */
  List<Map<String, Object>> of(Jar jar) {
    List<Map<String, Object>> reasons = new ArrayList<>();
    jar.doubt()
        .filter(d -> jar.standing().isHere())
        .ifPresent(
            d ->
                reasons.add(
                    reason(
                        words.text(
                            "record.why.doubt",
                            Map.of(
                                "jar", d.cause().toString(),
                                "date", day(d.since()),
                                "seen", d.seen().isEmpty() ? "–" : d.seen())),
                        "")));
    Standing standing = jar.standing();
    boolean late = !jar.standingAt(now).kind().equals(standing.kind());
    if (late && standing instanceof Standing.InRefrigerator cold) {
      reasons.add(plain("record.why.cold-late", "date", words.date("long", cold.eatBy())));
    }
    if (late && standing instanceof Standing.ToRecan recan) {
      reasons.add(plain("record.why.recan-late", "date", day(recan.by())));
    }
    if (standing instanceof Standing.Tossed tossed) {
      reasons.add(plain("record.why.tossed", "why", tossed.why().isEmpty() ? "–" : tossed.why()));
    }
    jar.outcome().ifPresent(o -> o.because().forEach(id -> reasons.add(ruled(id))));
    if (reasons.isEmpty() && standing instanceof Standing.ToThrowAway) {
      reasons.add(reason(words.text("record.why.later"), ""));
    }
    if (!jar.facts().madeHere()) {
      reasons.add(reason(words.text("record.why.unvouched"), ""));
    }
    return reasons;
  }

  /** What a rule says; one that is no longer in the table keeps its name alone. */
  private Map<String, Object> ruled(String id) {
    Optional<VerdictRule> rule = rules.apply(id);
    String finding = rule.map(r -> r.finding().word()).orElse(id);
    String key = "record.finding." + finding;
    return reason(
        words.has(key) ? words.text(key) : finding, rule.map(VerdictRule::source).orElse(""));
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

  private Map<String, Object> plain(String key, String name, String value) {
    return reason(words.text(key, Map.of(name, value)), "");
  }

  private static Map<String, Object> reason(String text, String source) {
    Map<String, Object> reason = new LinkedHashMap<>();
    reason.put("text", text);
    reason.put("source", source);
    return reason;
  }

  private String day(OffsetDateTime time) {
    return words.date("long", time.toLocalDate());
  }
}
