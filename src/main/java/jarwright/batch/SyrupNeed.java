package jarwright.batch;

import jarwright.process.JarSize;
import jarwright.process.Syrup;
import jarwright.process.SyrupRow;
import jarwright.quantity.Fraction;
import jarwright.quantity.Rounding;
import jarwright.quantity.Volume;

/**
 * Water and sugar for a batch's syrup, never less than the guide's load has for so many jars, and
 * of its strength: the water is rounded up first, the sugar then follows the water.
 */
public record SyrupNeed(Syrup syrup, Volume water, Volume sugar, String source) {
  private static final Fraction QUARTER = Fraction.of(1, 4);
  private static final Fraction COARSE_FROM_CUPS = Fraction.of(4);

  static SyrupNeed of(SyrupRow row, int jars, JarSize jar) {
    Fraction cups = row.water().times(row.share(jars, jar)).in(Volume.Unit.CUP);
    Volume water = Volume.of(Rounding.UP.toStep(cups, QUARTER), Volume.Unit.CUP);
    Fraction share = water.in(Volume.Unit.CUP).dividedBy(row.water().in(Volume.Unit.CUP));
    return new SyrupNeed(
        row.syrup(), water, rounded(row.sugar().times(share)), row.source().place());
  }

  /** To the next tablespoon; from four cups on to the next quarter cup, which is as near. */
  private static Volume rounded(Volume sugar) {
    Fraction cups = sugar.in(Volume.Unit.CUP);
    return cups.compareTo(COARSE_FROM_CUPS) < 0
        ? Volume.of(Rounding.UP.toStep(sugar.in(Volume.Unit.TBSP), Fraction.ONE), Volume.Unit.TBSP)
        : Volume.of(Rounding.UP.toStep(cups, QUARTER), Volume.Unit.CUP);
  }
}
