package jarwright.cli;

import jarwright.page.Wording;
import jarwright.pantry.JarWord;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Origin;
import jarwright.pantry.Spot;
import jarwright.pantry.StockLine;
import jarwright.record.Headlines;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What is on the shelves, for a terminal: what calls for something first, then place by place. */
final class ShelfText {
  private static final int FOOD_WIDTH = 40;

  private final Wording words;
  private final List<StockLine> lines;

  /**
   * @param lines first to use first
   */
  ShelfText(Wording words, List<StockLine> lines) {
    this.words = words;
    this.lines = lines;
  }

  /** The jars that call for something, each word under its heading; empty where none does. */
  String due() {
    StringBuilder out = new StringBuilder();
    for (JarWord word : JarWord.values()) {
      List<StockLine> own = lines.stream().filter(l -> l.word() == word).toList();
      if (!own.isEmpty() && word.isDue()) {
        out.append(heading(upper(word) + what(word), own));
        own.forEach(l -> out.append(line(l, true)));
      }
    }
    return out.toString();
  }

  /** All jars by place. */
  String byPlace() {
    Map<Spot, List<StockLine>> places = new TreeMap<>();
    lines.forEach(l -> places.computeIfAbsent(l.spot(), s -> new ArrayList<>()).add(l));
    StringBuilder out = new StringBuilder();
    places.forEach(
        (spot, own) -> {
          out.append(heading(title(spot), own));
          own.forEach(l -> out.append(line(l, false)));
        });
    return out.toString();
  }

  private static String heading(String title, List<StockLine> lines) {
    int jars = count(lines);
    return title + "  (" + jars(jars) + ")\n";
  }

  static int count(List<StockLine> lines) {
    return lines.stream().mapToInt(l -> l.jars().size()).sum();
  }

  static String jars(int jars) {
    return jars == 1 ? "1 jar" : jars + " jars";
  }

  private String upper(JarWord word) {
    String says = Headlines.plain(word, words).toUpperCase(Locale.ROOT);
    return says.endsWith(".") ? says.substring(0, says.length() - 1) : says;
  }

  /** What to do about jars that show that; empty where the word says it all. */
  private static String what(JarWord word) {
    return switch (word) {
      case THROW_AWAY -> ": unopened, then jarwright toss JAR --why TEXT";
      case DO_NOT_EAT_YET -> ". See: jarwright trace LOT";
      case RECAN -> ", by the time shown";
      case COOLING -> ": test the seals from the hour shown, then jarwright seal LOT";
      case TEST_SEAL -> ": then jarwright seal LOT";
      case UNVOUCHED -> ". See: jarwright trace LOT";
      case REFRIGERATOR -> ": eat by the date shown";
      case OVERDUE, UNDATED -> ": check the seal and the food. When in doubt, throw it out";
      case DUE_SOON -> ": due this month or next";
      default -> "";
    };
  }

  private static String title(Spot spot) {
    return spot.isShelf()
        ? spot.name().isEmpty() ? "Shelf not named" : spot.name()
        : spot.name().substring(0, 1).toUpperCase(Locale.ROOT) + spot.name().substring(1);
  }

  private String line(StockLine line, boolean withPlace) {
    LotFacts facts = line.facts();
    String place = withPlace && line.spot().isShelf() ? "  " + title(line.spot()) : "";
    String food = JarText.food(facts);
    String process =
        line.origin() instanceof Origin.ByWord by
            ? "  " + words.text("says.by-word.short", Map.of("who", by.vouched().who()))
            : "";
    return String.format(
            Locale.ROOT,
            "  %4d  %s  %s  %s%s%s%s",
            line.jars().size(),
            padded(food),
            deadline(line),
            line.lot() + "/" + line.jars(),
            place,
            withPlace ? "" : remark(line.word()),
            process)
        + "\n";
  }

  /** Longer names push the rest of their line to the right rather than being cut. */
  private static String padded(String food) {
    int length = food.codePointCount(0, food.length());
    return food + " ".repeat(Math.max(0, FOOD_WIDTH - length));
  }

  private static String deadline(StockLine line) {
    if (line.word() == JarWord.THROW_AWAY) {
      return "                  ";
    }
    Optional<String> day = line.deadline().map(Object::toString);
    return switch (line.spot().kind()) {
      case IN_FREEZER -> "frozen            ";
      case IN_REFRIGERATOR -> "eat by " + day.orElse("") + " ";
      case TO_RECAN -> line.moment().map(t -> "by " + VerdictText.minute(t)).orElse("");
      case COOLING -> line.moment().map(t -> "test from " + VerdictText.minute(t)).orElse("");
      case TO_THROW_AWAY -> "                  ";
      default -> day.map(d -> "use by " + d + " ").orElse("no date known     ");
    };
  }

  private String remark(JarWord word) {
    return switch (word) {
      case REFRIGERATOR, FREEZER, KEEPS -> "";
      default -> "  " + upper(word);
    };
  }
}
