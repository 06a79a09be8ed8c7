package jarwright.day;

import jarwright.page.Wording;
import jarwright.process.FormulaLine;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import jarwright.quantity.Volume;
import java.util.Map;
import java.util.Optional;

/**
 * Writes the amount of a formula's ingredient: exactly in US measures, in metric never less of acid
 * or salt and never more of food, so that no rounding makes the food less acid.
 */
public final class FormulaAmount {
  private static final int QUARTERS = 4;
  private static final int OUNCES = 16;

  private final Wording words;
  private final Units units;

  public FormulaAmount(Wording words, Units units) {
    this.words = words;
    this.units = units;
  }

  public Figure of(FormulaLine line) {
    if (line.isToTaste()) {
      return Figure.of(words.text("formula.to-taste"));
    }
    Rounding rounding = line.rounding();
    Optional<Volume.Unit> volume = Volume.Unit.named(line.unit());
    if (volume.isPresent()) {
      return range(line, (amount, style) -> Volume.of(amount, volume.get()).text(style, rounding));
    }
    Optional<Mass.Unit> mass = Mass.Unit.named(line.unit());
    if (mass.isPresent()) {
      return range(line, (amount, style) -> mass(amount, mass.get()).text(style, rounding));
    }
    boolean one = line.most().compareTo(Fraction.ONE) <= 0;
    String key = "formula.unit." + line.unit().replace(' ', '-') + (one ? ".one" : ".other");
    String number =
        line.least().equals(line.most())
            ? line.most().toString()
            : words.text(
                "range", Map.of("from", line.least().toString(), "to", line.most().toString()));
    return Figure.of(words.text(key, Map.of("n", number)));
  }

  /** Pounds in quarters, as scales show them; else in ounces, which hold it exactly. */
  private static Mass mass(Fraction amount, Mass.Unit unit) {
    boolean quarters = unit != Mass.Unit.LB || amount.times(QUARTERS).isWhole();
    return quarters ? new Mass(amount, unit) : new Mass(amount.times(OUNCES), Mass.Unit.OZ);
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
    String unit = most.substring(most.indexOf(' '));
    return least.endsWith(unit) ? least.substring(0, least.length() - unit.length()) : least;
  }
}
