package jarwright.checklist;

import jarwright.batch.FormulaMultiple;
import jarwright.day.FormulaAmount;
import jarwright.page.Wording;
import jarwright.process.FormulaLine;
import jarwright.process.JarYield;
import jarwright.quantity.Units;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

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
    one.putAll(FigureView.of(new FormulaAmount(words, units).of(line)));
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
}
