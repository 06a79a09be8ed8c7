package jarwright.checklist;

import jarwright.batch.Batch;
import jarwright.batch.FormulaMultiple;
import jarwright.batch.JarRange;
import jarwright.day.FormulaAmount;
import jarwright.page.Wording;
import jarwright.process.FormulaLine;
import jarwright.quantity.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** A fixed formula's ingredients for a batch. */
final class FormulaView {
  private final Batch batch;
  private final FormulaMultiple multiple;
  private final Fraction times;
  private final Wording words;
  private final UnaryOperator<String> named;

  /**
   * @param named the print-out language's words for an English ingredient or note
   */
  FormulaView(Batch batch, FormulaMultiple multiple, Wording words, UnaryOperator<String> named) {
    this.batch = batch;
    this.multiple = multiple;
    this.times = multiple.times().orElse(Fraction.ONE);
    this.words = words;
    this.named = named;
  }

  Map<String, Object> view() {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("made", made());
    view.put("yield", multiple.fills(batch.jar()).map(this::fills).orElse(""));
    boolean each = multiple.singly();
    List<FormulaLine> lines = each ? multiple.formula().lines() : multiple.lines();
    boolean asPrinted = each || times.equals(Fraction.ONE);
    view.put("lines", lines.stream().map(l -> line(l, asPrinted)).toList());
    return view;
  }

  private String made() {
    if (multiple.times().isEmpty()) {
      return words.text("formula.uncounted");
    }
    if (times.equals(Fraction.ONE)) {
      return words.text("formula.once");
    }
    if (times.compareTo(Fraction.ONE) < 0) {
      return words.text("formula.half");
    }
    String key = multiple.singly() ? "formula.one-at-a-time" : "formula.times";
    return words.text(key, Map.of("n", times.toString()));
  }

  /** The jars that it fills in all, and that the plan asked for fewer. */
  private String fills(JarRange range) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("most", words.number(range.most()));
    values.put("jars", words.count("jar." + batch.jar(), range.most()));
    if (range.isExact()) {
      return words.text("formula.fills", values) + fewerAsked();
    }
    values.put("fewest", words.number(range.fewest()));
    return words.text("formula.fills-range", values) + fewerAsked();
  }

  private String fewerAsked() {
    int asked = batch.asked().orElse(batch.jars());
    return asked == batch.jars()
        ? ""
        : " " + words.text("formula.fewer-asked", Map.of("n", words.number(asked)));
  }

  private Map<String, Object> line(FormulaLine line, boolean asPrinted) {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("ingredient", named.apply(line.ingredient()));
    one.putAll(FigureView.of(new FormulaAmount(words, batch.kitchen().units()).of(line)));
    one.put("note", note(line.note(), asPrinted));
    one.put("fixed", line.isFixed());
    return one;
  }

  /** The clauses of a note that are for the cook and still hold when the formula is multiplied. */
  private String note(String english, boolean asPrinted) {
    List<String> clauses = List.of(english.split("; ", -1));
    List<String> worded = List.of(named.apply(english).split("; ", -1));
    List<String> kept = new ArrayList<>();
    for (int i = 0; i < Math.min(clauses.size(), worded.size()); i++) {
      if (stillHolds(clauses.get(i), asPrinted)) {
        kept.add(worded.get(i));
      }
    }
    return String.join("; ", kept);
  }

  /** How a row was printed is not for the cook, and an amount in words was not multiplied. */
  private static boolean stillHolds(String clause, boolean asPrinted) {
    boolean aboutPrint = clause.contains("printed") || clause.contains("derived");
    boolean saidByMark = clause.contains("reduce") || clause.contains("do not increase");
    boolean amount = clause.chars().anyMatch(Character::isDigit);
    boolean ratio = clause.contains("per ") || clause.contains("%");
    return !aboutPrint && !saidByMark && (asPrinted || !amount || ratio);
  }
}
