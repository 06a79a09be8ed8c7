package jarwright.checklist;

import jarwright.batch.FormulaMultiple;
import jarwright.day.Figure;
import jarwright.page.Wording;
import jarwright.process.FormulaLine;
import jarwright.process.JarYield;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import jarwright.quantity.Volume;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** A fixed formula's ingredients for a batch. */
final class FormulaView {
  /** Guide chapter of jams and jellies, whose formulas are cooked one at a time. */
  private static final int JELLIES = 7;

  private final FormulaMultiple multiple;
  private final boolean oneAtATime;
  private final Wording words;
  private final Units units;
  private final UnaryOperator<String> named;

  /**
   * @param guide the product's chapter of the guide
   * @param named the print-out language's words for an English ingredient or note
   */
  FormulaView(
      FormulaMultiple multiple,
      int guide,
      Wording words,
      Units units,
      UnaryOperator<String> named) {
    this.multiple = multiple;
    this.oneAtATime = guide == JELLIES;
    this.words = words;
    this.units = units;
    this.named = named;
  }

  Map<String, Object> view() {
    Map<String, Object> view = new LinkedHashMap<>();
    int times = multiple.times().orElse(1);
    view.put("made", made(times));
    view.put("yield", multiple.formula().jars().map(this::yield).orElse(""));
    List<FormulaLine> lines = oneAtATime ? multiple.formula().lines() : multiple.lines();
    view.put("lines", lines.stream().map(l -> line(l, oneAtATime ? 1 : times)).toList());
    return view;
  }

  private String made(int times) {
    if (multiple.times().isEmpty()) {
      return words.text("formula.uncounted");
    }
    return oneAtATime && times > 1
        ? words.text("formula.one-at-a-time", Map.of("n", times))
        : words.count("formula.times", times);
  }

  /** What one formula gives. */
  private String yield(JarYield yield) {
    String jars = words.count("jar." + yield.jar(), yield.most());
    String key = yield.fewest() == yield.most() ? "formula.yield" : "formula.yield-range";
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("most", yield.most());
    values.put("jars", jars);
    if (yield.fewest() != yield.most()) {
      values.put("fewest", yield.fewest());
    }
    return words.text(key, values);
  }

  private Map<String, Object> line(FormulaLine line, int times) {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("ingredient", named.apply(line.ingredient()));
    one.putAll(FigureView.of(amount(line)));
    one.put("note", note(line.note(), times));
    one.put("fixed", line.isFixed());
    return one;
  }

  /** The clauses of a note that are for the cook and still hold when the formula is multiplied. */
  private String note(String english, int times) {
    List<String> clauses = List.of(english.split("; ", -1));
    List<String> worded = List.of(named.apply(english).split("; ", -1));
    List<String> kept = new ArrayList<>();
    for (int i = 0; i < Math.min(clauses.size(), worded.size()); i++) {
      if (stillHolds(clauses.get(i), times)) {
        kept.add(worded.get(i));
      }
    }
    return String.join("; ", kept);
  }

  /** How a row was printed is not for the cook, and an amount in words was not multiplied. */
  private static boolean stillHolds(String clause, int times) {
    boolean aboutPrint = clause.contains("printed") || clause.contains("derived");
    boolean saidByMark = clause.contains("reduce") || clause.contains("do not increase");
    boolean amount = clause.chars().anyMatch(Character::isDigit);
    boolean ratio = clause.contains("per ") || clause.contains("%");
    return !aboutPrint && !saidByMark && (times == 1 || !amount || ratio);
  }

  private Figure amount(FormulaLine line) {
    if (line.isToTaste()) {
      return Figure.of(words.text("formula.to-taste"));
    }
    Rounding rounding = line.isAcid() ? Rounding.UP : Rounding.NEAREST;
    if (spelled(line.unit(), Volume.Unit.values())) {
      Function<Fraction, Volume> volume =
          amount -> Volume.parse(amount + " " + line.unit());
      return range(line, (amount, style) -> volume.apply(amount).text(style, rounding));
    }
    if (spelled(line.unit(), Mass.Unit.values())) {
      return range(
          line,
          (amount, style) -> Mass.parse(amount + " " + line.unit()).text(style, rounding));
    }
    boolean one = line.most().compareTo(Fraction.ONE) <= 0;
    String key = "formula.unit." + line.unit().replace(' ', '-') + (one ? ".one" : ".other");
    String number =
        line.least().equals(line.most())
            ? line.most().toString()
            : words.text("range", Map.of("from", line.least(), "to", line.most()));
    return Figure.of(words.text(key, Map.of("n", number)));
  }

  private interface Written {
    String text(Fraction amount, Style style);
  }

  private Figure range(FormulaLine line, Written written) {
    return Figure.of(
        units,
        words,
        style -> {
          String most = written.text(line.most(), style);
          String least = written.text(line.least(), style);
          return least.equals(most)
              ? most
              : words.text("range", Map.of("from", withoutUnit(least, most), "to", most));
        });
  }

  /** {@code 2 cups} before {@code to 3 cups} becomes {@code 2}. */
  private static String withoutUnit(String least, String most) {
    String unit = most.substring(most.lastIndexOf(' '));
    return least.endsWith(unit) ? least.substring(0, least.length() - unit.length()) : least;
  }

  private static boolean spelled(String unit, Object[] units) {
    return Stream.of(units)
        .map(u -> u instanceof Volume.Unit v ? v.spellings() : ((Mass.Unit) u).spellings())
        .anyMatch(s -> s.contains(unit));
  }
}
