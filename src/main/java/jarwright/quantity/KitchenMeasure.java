package jarwright.quantity;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Writes a US volume with the largest measures that hold it exactly: {@code 7 Tbsp} stays, {@code
 * 16 Tbsp} becomes {@code 1 cup}, {@code 18 Tbsp} becomes {@code 1 cup + 2 Tbsp}. Nothing is
 * rounded.
 */
final class KitchenMeasure {
  private static final List<Volume.Unit> LADDER =
      List.of(
          Volume.Unit.GALLON,
          Volume.Unit.QUART,
          Volume.Unit.CUP,
          Volume.Unit.TBSP,
          Volume.Unit.TSP);
  private static final Set<Volume.Unit> SPOONS = Set.of(Volume.Unit.TSP, Volume.Unit.TBSP);

  /** Measuring cups have these parts and no others. */
  private static final Set<BigInteger> CUP_PARTS =
      Set.of(BigInteger.ONE, BigInteger.TWO, BigInteger.valueOf(3), BigInteger.valueOf(4));

  private static final int PLAIN_SPOONS = 8;

  private KitchenMeasure() {}

  static String text(Volume volume, Style style) {
    if (readsAsWritten(volume)) {
      return named(volume.amount(), volume.unit(), style);
    }
    List<String> parts = new ArrayList<>();
    Fraction left = volume.in(Volume.Unit.TSP);
    for (Volume.Unit unit : LADDER) {
      Fraction size = new Volume(Fraction.ONE, unit).in(Volume.Unit.TSP);
      Fraction count = left.dividedBy(size);
      Fraction taken = unit == Volume.Unit.TSP ? count : whole(count, unit);
      if (taken.signum() > 0) {
        parts.add(named(taken, unit, style));
        left = left.minus(taken.times(size));
      }
    }
    return parts.isEmpty() ? named(Fraction.ZERO, volume.unit(), style) : String.join(" + ", parts);
  }

  private static boolean readsAsWritten(Volume volume) {
    Fraction amount = volume.amount();
    if (amount.signum() <= 0 || volume.unit() == Volume.Unit.FL_OZ) {
      return true;
    }
    return SPOONS.contains(volume.unit())
        ? amount.compareTo(Fraction.of(PLAIN_SPOONS)) < 0
        : CUP_PARTS.contains(amount.denominator());
  }

  /** Whole measures, and for cups the quarters or thirds that a measuring cup has. */
  private static Fraction whole(Fraction count, Volume.Unit unit) {
    if (unit == Volume.Unit.CUP && CUP_PARTS.contains(count.denominator())) {
      return count;
    }
    Fraction step = unit == Volume.Unit.CUP ? Fraction.of(1, 4) : Fraction.ONE;
    return Rounding.DOWN.toStep(count, step);
  }

  private static String named(Fraction amount, Volume.Unit unit, Style style) {
    boolean several = amount.compareTo(Fraction.ONE) > 0;
    String word = unit.spellings().get(several && takesPlural(unit) ? 1 : 0);
    AmountWords words = style.words();
    return amount + " " + (several ? words.several(word) : words.word(word));
  }

  private static boolean takesPlural(Volume.Unit unit) {
    return unit == Volume.Unit.CUP || unit == Volume.Unit.PINT || unit == Volume.Unit.QUART;
  }
}
