package jarwright.cli;

import jarwright.pantry.Advice;
import jarwright.pantry.Grade;
import jarwright.pantry.Jar;
import jarwright.pantry.JarWord;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Origin;
import jarwright.pantry.Reason;
import jarwright.pantry.Standing;
import jarwright.pantry.VerdictRules;
import jarwright.record.Headlines;
import jarwright.record.Reasons;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;

/** What a line says of a jar: what is in it, what it shows, where it is, and why. */
final class JarText {
  private final VerdictText words;
  private final Headlines headlines;
  private final Reasons reasons;
  private final OffsetDateTime now;

  JarText(VerdictText words, VerdictRules rules, OffsetDateTime now) {
    this.words = words;
    this.headlines = new Headlines(words.wording(), now);
    this.reasons = new Reasons(words.wording(), rules::byId);
    this.now = now;
  }

  /** {@code Plums, halved or whole, quart}. */
  static String food(LotFacts facts) {
    return facts.jar().isEmpty() ? facts.shownName() : facts.shownName() + ", " + facts.jar();
  }

  /** The large words of its page. */
  String says(Jar jar) {
    return headlines.of(jar).words();
  }

  /** The large words, and where it is where they do not say so: as a list shows it. */
  String standing(Jar jar) {
    JarWord word = Advice.word(jar, now);
    boolean told =
        switch (word) {
          case REFRIGERATOR,
              FREEZER,
              COOLING,
              TEST_SEAL,
              PLANNED,
              MISSING,
              TAKEN,
              TOSSED,
              RECANNED ->
              true;
          case NOT_RECORDED, UNFILLED, CANCELLED -> true;
          default -> false;
        };
    String says = says(jar);
    String plain = says.endsWith(".") ? says.substring(0, says.length() - 1) : says;
    return told ? plain : plain + "; " + place(jar);
  }

  /** Where it stands, or what became of it, as {@code at cellar B3}; whatever it shows. */
  String place(Jar jar) {
    Standing standing = jar.standing();
    return switch (standing.kind()) {
      case PLANNED -> "results not recorded";
      case UNFILLED -> "never filled";
      case COOLING -> "out of the canner, its seal not tested yet";
      case CANCELLED -> "cancelled on " + day(standing);
      case ON_SHELF -> jar.shelf().isEmpty() ? "on a shelf without a name" : "at " + jar.shelf();
      case IN_REFRIGERATOR -> "in the refrigerator";
      case IN_FREEZER -> "in the freezer";
      case TO_RECAN -> "waiting to be re-canned or frozen";
      case TO_THROW_AWAY -> "not on a shelf";
      case MISSING -> "not found on " + day(standing);
      case TAKEN -> "taken on " + day(standing);
      case TOSSED -> "thrown away on " + day(standing);
      case RECANNED -> "re-canned on " + day(standing);
    };
  }

  private static String day(Standing standing) {
    return standing.since().orElseThrow().toLocalDate().toString();
  }

  /** By whose word it may be eaten, as {@code ; by word of Ana: …}; empty for others. */
  String vouched(Origin origin) {
    return origin instanceof Origin.ByWord by
        ? "; "
            + words
                .wording()
                .text(
                    "says.by-word",
                    Map.of("who", by.vouched().who(), "source", by.vouched().source()))
        : "";
  }

  /**
   * Why it shows that, the reason that decides first, with sources; none where nothing is wrong.
   */
  List<String> reasons(Jar jar) {
    Advice advice = Advice.of(jar, now);
    List<Reason> told = advice.reasons().stream().filter(r -> !isSound(r)).toList();
    return reasons.of(new Advice(advice.word(), told)).stream().map(JarText::sourced).toList();
  }

  /** What speaks against jars from elsewhere. */
  String origin(Origin origin) {
    Advice advice = new Advice(JarWord.THROW_AWAY, List.of(new Reason.From(origin)));
    return sourced(reasons.of(advice).get(0));
  }

  private static boolean isSound(Reason reason) {
    return reason instanceof Reason.CameOut out && out.outcome().verdict().grade() == Grade.SHELF;
  }

  private static String sourced(Reasons.Told told) {
    return told.sources().isEmpty()
        ? told.text()
        : told.text() + " (" + String.join("; ", told.sources()) + ")";
  }
}
