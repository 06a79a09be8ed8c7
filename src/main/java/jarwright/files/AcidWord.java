package jarwright.files;

import jarwright.ask.Saying;
import jarwright.problem.Nearest;
import jarwright.problem.Refused;
import jarwright.process.AcidKind;
import jarwright.quantity.Fraction;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Understands the acid of a plan; only acids of known strength pass. */
final class AcidWord {
  private static final List<String> NONE = List.of("none", "no", "-");
  private static final Pattern PERCENT = Pattern.compile("(\\d{1,3}(?:[.,]\\d{1,3})?)-?%");
  private static final Fraction LEAST = Fraction.of(5);
  private static final String BOTTLED = "write acid: " + AcidKind.BOTTLED_LEMON_JUICE.id();
  private static final String FIVE = "write acid: " + AcidKind.VINEGAR.id();

  private AcidWord() {}

  /** The acid that the key names; none, or a problem, otherwise. */
  static Optional<AcidKind> read(Fields fields, String key, PlanWords words)
      throws IOException, Refused {
    Optional<String> word = fields.plainWord(key);
    if (word.isEmpty() || NONE.contains(word.get())) {
      return Optional.empty();
    }
    Optional<AcidKind> kind = PlanWords.exact(word.get(), AcidKind::named, AcidKind.ids());
    if (kind.isPresent()) {
      return kind;
    }
    Set<String> meant = words.search().called(Saying.Sense.ACID, word.get());
    return meant.size() == 1
        ? AcidKind.named(meant.iterator().next())
        : other(fields, key, word.get());
  }

  private static Optional<AcidKind> other(Fields fields, String key, String word) {
    if (isOf(word, "vinegar", "vinagre")) {
      return vinegar(fields, key, word);
    }
    if (isOf(word, "lime", "lima", "verde")) {
      fields.problem(key, "the printed doses are for lemon juice, not lime", BOTTLED);
    } else if (isOf(word, "lemon", "limon", "limón")) {
      fields.problem(
          key,
          isOf(word, "fresh", "fresco", "exprimid")
              ? "fresh lemon juice has no known strength, so it has no tested dose"
              : "\"lemon juice\" may be fresh, and only bottled has a known strength",
          BOTTLED + " and use nothing else");
    } else if (isOf(word, "ascorbic", "ascórbic", "vitamin")) {
      fields.problem(
          key,
          "ascorbic acid keeps the colour and does not acidify",
          "write acid: " + String.join(" or ", AcidKind.ids()));
    } else {
      fields.problem(
          key, "\"" + fields.said(key) + "\" is not known", Nearest.remedy(word, AcidKind.ids()));
    }
    return Optional.empty();
  }

  private static boolean isOf(String word, String... parts) {
    return Stream.of(parts).anyMatch(word::contains);
  }

  private static Optional<AcidKind> vinegar(Fields fields, String key, String word) {
    Matcher percent = PERCENT.matcher(word);
    if (!percent.find()) {
      fields.problem(key, "the vinegar's strength is not said, and it must be 5 % or more", FIVE);
      return Optional.empty();
    }
    int against = Fraction.parse(percent.group(1).replace(',', '.')).compareTo(LEAST);
    if (against == 0) {
      return Optional.of(AcidKind.VINEGAR);
    }
    if (against < 0) {
      fields.problem(
          key,
          "vinegar of " + percent.group(1) + " % is too weak; it must be 5 % or more",
          "use vinegar of 5 % and " + FIVE);
    } else {
      fields.problem(
          key,
          "the printed dose is for vinegar of 5 %",
          FIVE + "; a stronger one has the same dose");
    }
    return Optional.empty();
  }
}
