package jarwright.cli;

import jarwright.pantry.LotFacts;
import jarwright.pantry.Spot;
import jarwright.pantry.StockLine;
import jarwright.pantry.Urgency;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What is on the shelves, for a terminal: what calls for something first, then place by place. */
final class ShelfText {
  private static final int FOOD_WIDTH = 40;
  private static final Set<Urgency> KEEPS = EnumSet.of(Urgency.KEEPS, Urgency.FREEZER);

  private final List<StockLine> lines;

  /**
   * @param lines first to use first
   */
  ShelfText(List<StockLine> lines) {
    this.lines = lines;
  }

  /** The jars that call for something, each urgency under its heading; empty where none does. */
  String due() {
    StringBuilder out = new StringBuilder();
    for (Urgency urgency : Urgency.values()) {
      List<StockLine> own = lines.stream().filter(l -> l.urgency() == urgency).toList();
      if (!own.isEmpty() && !KEEPS.contains(urgency)) {
        out.append(heading(title(urgency), own));
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

  private static String title(Urgency urgency) {
    return switch (urgency) {
      case THROW_AWAY -> "THROW AWAY, never taste: jarwright toss JAR --why TEXT";
      case RECAN -> "CAN AGAIN OR FREEZE, in time";
      case COOLING -> "COOLING: test the seals from the hour shown, then jarwright seal LOT";
      case LOOK_AT -> "LOOK BEFORE EATING: another jar of the lot was spoiled";
      case UNVOUCHED -> "PROCESS NOT KNOWN: in any doubt throw it away, untasted";
      case REFRIGERATOR -> "REFRIGERATOR, eat in time";
      case OVERDUE -> "PAST THE USE-BY DATE: look well, use now";
      case USE_FIRST -> "USE FIRST";
      case DUE_SOON -> "DUE THIS MONTH OR NEXT";
      case KEEPS -> "KEEPS";
      case FREEZER -> "FREEZER";
    };
  }

  private static String title(Spot spot) {
    return spot.isShelf()
        ? spot.name().isEmpty() ? "Shelf not named" : spot.name()
        : spot.name().substring(0, 1).toUpperCase(Locale.ROOT) + spot.name().substring(1);
  }

  private static String line(StockLine line, boolean withPlace) {
    LotFacts facts = line.facts();
    String place = withPlace && line.spot().isShelf() ? "  " + title(line.spot()) : "";
    String food = JarText.food(facts);
    String process = facts.madeHere() ? "" : "  process not known";
    return String.format(
            Locale.ROOT,
            "  %4d  %s  %s  %s%s%s%s",
            line.jars().size(),
            padded(food),
            deadline(line),
            line.lot() + "/" + line.jars(),
            place,
            withPlace ? "" : remark(line.urgency()),
            process)
        + "\n";
  }

  /** Longer names push the rest of their line to the right rather than being cut. */
  private static String padded(String food) {
    int length = food.codePointCount(0, food.length());
    return food + " ".repeat(Math.max(0, FOOD_WIDTH - length));
  }

  private static String deadline(StockLine line) {
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

  private static String remark(Urgency urgency) {
    return switch (urgency) {
      case THROW_AWAY -> "  THROW AWAY";
      case LOOK_AT -> "  LOOK BEFORE EATING";
      case OVERDUE -> "  overdue";
      case USE_FIRST -> "  use first";
      case DUE_SOON -> "  due soon";
      default -> "";
    };
  }
}
