package jarwright.cli;

import jarwright.page.Wording;
import jarwright.pantry.Finding;
import jarwright.pantry.Grade;
import jarwright.pantry.Judged;
import jarwright.pantry.Verdict;
import jarwright.pantry.VerdictRule;
import jarwright.quantity.MeasuredText;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import jarwright.render.WordBundle;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a verdict tells a person at the terminal to do. */
final class VerdictText {
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private static final String DEED = "record.deed.";

  private final Wording words;
  private final Style style;

  VerdictText(Units units) {
    this.words = WordBundle.load("en");
    this.style = Style.english(units);
  }

  /** The words themselves. */
  Wording wording() {
    return words;
  }

  static String minute(OffsetDateTime time) {
    return MINUTE.format(time);
  }

  /**
   * What to do with the jar, and by what time.
   *
   * @param shelf where it is to stand; may be empty
   * @param useBy empty where not known
   */
  List<String> deed(Verdict verdict, String shelf, Optional<LocalDate> useBy) {
    String place = shelf.isEmpty() ? "" : ", " + shelf;
    String best = useBy.map(d -> " " + deed("use-by", "date", d)).orElse("");
    if (verdict instanceof Verdict.Shelf) {
      return List.of(head("shelf") + place + "." + best);
    }
    if (verdict instanceof Verdict.UseFirst) {
      return List.of(head("use-first") + place + "." + best);
    }
    if (verdict instanceof Verdict.Refrigerate cold) {
      return List.of(
          head("refrigerate") + ". " + deed("refrigerate-by", "date", cold.eatBy()),
          words.text("says.refrigerator.detail"));
    }
    if (verdict instanceof Verdict.Freezer) {
      return List.of(head("freezer") + ". " + words.text(DEED + "freezer-detail"));
    }
    if (verdict instanceof Verdict.Recan recan) {
      String head = deed("recan", "time", minute(recan.by())).toUpperCase(Locale.ROOT);
      List<String> lines = new ArrayList<>();
      lines.add(head + ". " + words.text(DEED + "recan-detail"));
      recan.eatBy().ifPresent(d -> lines.add(deed("refrigerate-by", "date", d)));
      lines.add(measured(DEED + "recan-how"));
      return lines;
    }
    return List.of(head("throw-away") + ". " + words.text(DEED + "throw-away-detail"), spoiled());
  }

  private String head(String key) {
    return words.text(DEED + key).toUpperCase(Locale.ROOT);
  }

  private String deed(String key, String name, Object value) {
    return words.text(DEED + key, Map.of(name, value.toString()));
  }

  /** What to look for before a jar is eaten. */
  String caution() {
    return words.text("record.caution");
  }

  /** How to be rid of a jar that may be spoiled. */
  String spoiled() {
    return words.text("doubt.spoiled") + ": " + measured("doubt.spoiled.text");
  }

  /** What was found of the load or the jar, in a sentence. */
  String finding(Finding finding) {
    return words.text("record.finding." + finding.word());
  }

  /** What was found, each with the rules and sources that decided; and that it was too late. */
  List<String> because(Judged judged) {
    Map<Finding, List<VerdictRule>> found = new LinkedHashMap<>();
    judged
        .because()
        .forEach(r -> found.computeIfAbsent(r.finding(), f -> new ArrayList<>()).add(r));
    List<String> lines = new ArrayList<>();
    found.forEach(
        (finding, rules) -> {
          lines.add(finding(finding));
          rules.forEach(r -> lines.add("rule " + r.id() + " (" + r.source() + ")"));
        });
    if (judged.isLate()) {
      lines.add(words.text(DEED + "too-late"));
    }
    return lines;
  }

  /** A verdict in a few words. */
  String grade(Grade grade) {
    return words.text("record.verdict." + grade.word());
  }

  /** What the ledger calls something that happened. */
  String event(String kind) {
    return words.text("record.event." + kind);
  }

  private String measured(String key) {
    return MeasuredText.parse(words.text(key)).runs(style, Map.of()).stream()
        .map(MeasuredText.Run::text)
        .collect(Collectors.joining());
  }
}
