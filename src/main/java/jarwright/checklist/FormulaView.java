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
    view.put("times", times);
    view.put("oneAtATime", oneAtATime && times > 1);
    view.put("yield", multiple.formula().jars().map(this::yield).orElse(""));
    List<FormulaLine> lines = oneAtATime ? multiple.formula().lines() : multiple.lines();
    view.put("lines", lines.stream().map(l -> line(l, oneAtATime ? 1 : times)).toList());
    return view;
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
    one.put("note", stillHolds(line.note(), times) ? named.apply(line.note()) : "");
    one.put("fixed", line.isFixed());
    return one;
  }

  /**
   * A note on how the row was printed is not for the cook, nor an amount that was not multiplied.
   */
  private static boolean stillHolds(String note, int times) {
    boolean aboutPrint = note.contains("printed") || note.contains("derived");
    boolean saidByMark = note.contains("reduce") || note.contains("do not increase");
    boolean amount = note.chars().anyMatch(Character::isDigit);
    boolean ratio = note.contains("per ") || note.contains("%");
    return !aboutPrint && !saidByMark && (times == 1 || !amount || ratio);
  }

  private Figure amount(FormulaLine line) {
    if (line.isToTaste()) {
      return Figure.of(words.text("formula.to-taste"));
    }
    Rounding rounding = line.isAcid() ? Rounding.UP : Rounding.NEAREST;
    if (spelled(line.unit(), Volume.Unit.values())) {
      Function<Fraction, Volume> volume = amount -> Volume.parse(amount + " " + line.unit());
      return range(line, (amount, style) -> volume.apply(amount).text(style, rounding));
    }
    if (spelled(line.unit(), Mass.Unit.values())) {
      return range(
          line, (amount, style) -> Mass.parse(amount + " " + line.unit()).text(style, rounding));
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
