package jarwright.cli;

import jarwright.pantry.Finding;
import jarwright.pantry.Jar;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Outcome;
import jarwright.pantry.Standing;
import jarwright.pantry.VerdictRule;
import jarwright.pantry.VerdictRules;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a line says of a jar: what is in it, where it is, and why it must not be eaten. */
final class JarText {
  private final VerdictText words;
  private final VerdictRules rules;
  private final OffsetDateTime now;

  JarText(VerdictText words, VerdictRules rules, OffsetDateTime now) {
    this.words = words;
    this.rules = rules;
    this.now = now;
  }

  /** {@code Plums, halved or whole, quart}. */
  static String food(LotFacts facts) {
    return facts.jar().isEmpty() ? facts.shownName() : facts.shownName() + ", " + facts.jar();
  }

  /** Where it stands, or what became of it, as {@code at cellar B3}. */
  String place(Jar jar) {
    Standing standing = jar.standingAt(now);
    return switch (standing.kind()) {
      case PLANNED -> "not sealed yet";
      case UNFILLED -> "never filled";
      case COOLING -> cooling((Standing.Cooling) standing);
      case ON_SHELF -> jar.shelf().isEmpty() ? "on a shelf without a name" : "at " + jar.shelf();
      case IN_REFRIGERATOR ->
          "in the refrigerator, eat by " + ((Standing.InRefrigerator) standing).eatBy();
      case IN_FREEZER -> "in the freezer";
      case TO_RECAN ->
          "to be canned again or frozen by "
              + VerdictText.minute(((Standing.ToRecan) standing).by());
      case TO_THROW_AWAY -> "to be thrown away";
      case MISSING -> "missing since " + ((Standing.Missing) standing).since().toLocalDate();
      case TAKEN -> "taken on " + ((Standing.Taken) standing).when().toLocalDate();
      case TOSSED -> tossed((Standing.Tossed) standing);
      case RECANNED -> "canned again on " + ((Standing.Recanned) standing).when().toLocalDate();
    };
  }

  private String cooling(Standing.Cooling cooling) {
    return now.isBefore(cooling.lookFrom())
        ? "cooling, test its seal from " + VerdictText.minute(cooling.lookFrom())
        : "cooled, its seal not tested yet";
  }

  private static String tossed(Standing.Tossed tossed) {
    String why = tossed.why().isEmpty() ? "" : ": " + tossed.why();
    return "thrown away on " + tossed.when().toLocalDate() + why;
  }

  /** Why it is not on a shelf, with the rules and their sources; none where nothing is wrong. */
  List<String> reasons(Jar jar) {
    List<String> reasons = new ArrayList<>();
    Standing standing = jar.standing();
    boolean late = standing.kind() != jar.standingAt(now).kind();
    if (late && standing instanceof Standing.InRefrigerator cold) {
      reasons.add("It was to be eaten from the refrigerator by " + cold.eatBy() + ".");
    }
    if (late && standing instanceof Standing.ToRecan recan) {
      reasons.add(
          "It was to be canned again, frozen or refrigerated by "
              + VerdictText.minute(recan.by())
              + ".");
    }
    Map<String, List<String>> found = new LinkedHashMap<>();
    jar.outcome().map(Outcome::because).orElse(List.of()).forEach(id -> rule(id, found));
    found.forEach(
        (what, told) ->
            reasons.add((what + " Rule " + String.join("; rule ", told) + ".").strip()));
    if (reasons.isEmpty() && standing instanceof Standing.ToThrowAway) {
      reasons.add("It was found spoiled, or turned up again after it had been given up.");
    }
    return reasons;
  }

  /** Why it is to be looked at before it is eaten; empty where it is not in doubt. */
  static Optional<String> doubt(Jar jar) {
    return jar.doubt()
        .map(
            doubt ->
                "Jar "
                    + doubt.cause()
                    + " of its lot was found spoiled on "
                    + doubt.since().toLocalDate()
                    + (doubt.seen().isEmpty() ? "." : ": " + doubt.seen() + "."));
  }

  /** Adds a rule to those of its finding; one no longer in the table keeps its name alone. */
  private void rule(String id, Map<String, List<String>> found) {
    Optional<VerdictRule> rule = rules.byId(id);
    if (rule.isEmpty()) {
      found.computeIfAbsent("", f -> new ArrayList<>()).add(id);
    } else if (rule.get().finding() != Finding.SOUND) {
      found
          .computeIfAbsent(words.finding(rule.get().finding()), f -> new ArrayList<>())
          .add(id + " (" + rule.get().source() + ")");
    }
  }
}
