package jarwright.batch;

import jarwright.process.JarSize;
import jarwright.process.Syrup;
import jarwright.process.SyrupRow;
import jarwright.quantity.Fraction;
import jarwright.quantity.Rounding;
import jarwright.quantity.Volume;

/** Water and sugar for a batch's syrup, each rounded up to the quarter cup. */
public record SyrupNeed(Syrup syrup, Volume water, Volume sugar, String source) {
  private static final Fraction QUARTER = Fraction.of(1, 4);

  static SyrupNeed of(SyrupRow row, int jars, JarSize jar) {
    Fraction share = row.share(jars, jar);
    return new SyrupNeed(
        row.syrup(),
        upToQuarterCup(row.water(), share),
        upToQuarterCup(row.sugar(), share),
        row.source().place());
  }

  private static Volume upToQuarterCup(Volume load, Fraction share) {
    Fraction cups = load.times(share).in(Volume.Unit.CUP);
    return Volume.of(Rounding.UP.toStep(cups, QUARTER), Volume.Unit.CUP);
  }
}
