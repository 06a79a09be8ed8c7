package jarwright.batch;

import jarwright.process.Formula;
import jarwright.process.FormulaLine;
import jarwright.process.JarSize;
import jarwright.process.JarYield;
import jarwright.process.Product;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import jarwright.quantity.Rounding;
import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A fixed formula taken so many times, its proportions untouched: in halves and wholes, or in
 * wholes alone where each is cooked by itself.
 *
 * @param times a multiple of a half; empty where the guide prints neither jars nor a weight, so
 *     that the cook has to decide how often she makes it
 * @param singly whether each is cooked in a pot of its own, one after the other
 */
public record FormulaMultiple(Formula formula, Optional<Fraction> times, boolean singly) {
  private static final Fraction HALF = Fraction.of(1, 2);

  /**
   * The formula that leaves the least over, as often as it takes so that it may fill the jars and
   * surely fills one. One that is printed for the very size comes before the others.
   */
  static Optional<FormulaMultiple> filling(
      List<Formula> printed, int jars, JarSize jar, Product product) {
    boolean singly = product.isCookedSingly();
    return forSize(printed, jar).stream()
        .map(
            f ->
                new FormulaMultiple(
                    f,
                    f.jars()
                        .map(y -> times(y, jars, jar, singly))
                        .or(() -> byWeight(f, jars, jar, product)),
                    singly))
        .min(
            Comparator.comparing((FormulaMultiple m) -> m.mostPints())
                .thenComparing(m -> m.times().orElse(Fraction.ONE)));
  }

  /**
   * The formula that so much of its main produce makes, never more of it than there is; zero times
   * where it is too little. None where the guide counts jars and weighs no produce more than the
   * others.
   */
  static Optional<FormulaMultiple> from(
      List<Formula> printed, Mass produce, JarSize jar, Product product) {
    boolean singly = product.isCookedSingly();
    return forSize(printed, jar).stream()
        .filter(f -> f.jars().isEmpty() || f.mainProduce().isPresent())
        .map(
            f ->
                new FormulaMultiple(
                    f,
                    f.mainProduce()
                        .map(l -> produce.inPounds().dividedBy(l.most()))
                        .map(n -> Rounding.DOWN.toStep(n, step(singly))),
                    singly))
        .max(Comparator.comparing(FormulaMultiple::mostPints));
  }

  private static List<Formula> forSize(List<Formula> printed, JarSize jar) {
    List<Formula> sameSize =
        printed.stream().filter(f -> f.jars().filter(y -> y.jar() == jar).isPresent()).toList();
    return sameSize.isEmpty() ? printed : sameSize;
  }

  private static Fraction times(JarYield yield, int jars, JarSize jar, boolean singly) {
    Fraction all = jar.pints().times(jars).dividedBy(yield.mostPints());
    Fraction one = jar.pints().dividedBy(yield.leastPints());
    return Rounding.UP.toStep(all.compareTo(one) < 0 ? one : all, step(singly));
  }

  /** Where no jars are counted, by the weight of produce that the guide prints for them. */
  private static Optional<Fraction> byWeight(
      Formula formula, int jars, JarSize jar, Product product) {
    return formula
        .mainProduce()
        .flatMap(
            line ->
                ProducePerJar.of(product.produce(), jar)
                    .map(p -> p.forJars(jars).about().inPounds().dividedBy(line.most())))
        .map(n -> Rounding.UP.toStep(n, step(product.isCookedSingly())));
  }

  private static Fraction step(boolean singly) {
    return singly ? Fraction.ONE : HALF;
  }

  private Fraction mostPints() {
    return formula.jars().map(y -> y.mostPints().times(count())).orElse(Fraction.ZERO);
  }

  private Fraction count() {
    return times.orElse(Fraction.ONE);
  }

  /** The full jars of a size that it gives; none where the guide counts no jars. */
  public Optional<JarRange> fills(JarSize jar) {
    return formula
        .jars()
        .map(
            yield -> {
              Fraction least = yield.leastPints().times(count()).dividedBy(jar.pints());
              Fraction most = yield.mostPints().times(count()).dividedBy(jar.pints());
              Fraction middle = least.plus(most).dividedBy(Fraction.of(2));
              return new JarRange(whole(least), whole(middle), whole(most));
            });
  }

  private static int whole(Fraction jars) {
    return jars.floor().min(BigInteger.valueOf(Integer.MAX_VALUE)).intValueExact();
  }

  /** Whether the produce at hand is too little for any of it. */
  boolean isNothing() {
    return times.filter(n -> n.signum() == 0).isPresent();
  }

  /** The least amount that the formula can be taken in. */
  FormulaMultiple least() {
    return new FormulaMultiple(formula, Optional.of(step(singly)), singly);
  }

  /** The next smaller amount that the formula can be taken in, where it still fills a jar. */
  public Optional<FormulaMultiple> less(JarSize jar) {
    return times
        .map(n -> n.minus(step(singly)))
        .filter(n -> n.signum() > 0)
        .map(n -> new FormulaMultiple(formula, Optional.of(n), singly))
        .filter(m -> m.fills(jar).filter(r -> r.fewest() > 0).isPresent());
  }

  /** All ingredients for all the times together; as printed where no times are known. */
  public List<FormulaLine> lines() {
    return formula.lines().stream().map(l -> l.times(count())).toList();
  }

  /** The weight of its main produce, where it has one that is weighed. */
  public Optional<Mass> mainProduce() {
    return formula.mainProduce().map(l -> Mass.pounds(l.most().times(count())));
  }
}
