package jarwright.checklist;

import jarwright.batch.FormulaMultiple;
import jarwright.day.FormulaAmount;
import jarwright.page.Wording;
import jarwright.process.FormulaLine;
import jarwright.process.JarYield;
import jarwright.quantity.Units;
import java.util.ArrayList;
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
    view.put("made", made(times));
    view.put("yield", multiple.formula().jars().map(this::yieldOf).orElse(""));
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
  private String yieldOf(JarYield yield) {
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
}
