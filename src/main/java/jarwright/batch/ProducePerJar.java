package jarwright.batch;

import jarwright.process.JarSize;
import jarwright.process.ProduceNeed;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import java.math.BigInteger;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Pounds of fresh produce for one jar, from the guide's loads, averages and container yields.
 *
 * @param least where the produce yields best
 * @param about by the guide's canner load
 * @param most where it yields worst: with so much nobody runs short
 */
public record ProducePerJar(Fraction least, Fraction about, Fraction most) {
  private static final int QUARTS_IN_LOAD = 7;
  private static final int PINTS_IN_LOAD = 9;

  /** None where the guide prints no weight. */
  public static Optional<ProducePerJar> of(ProduceNeed need, JarSize jar) {
    Fraction quarts = jar.quarts();
    Optional<Fraction> byQuarts =
        need.perSevenQuarts().map(lb -> lb.dividedBy(Fraction.of(QUARTS_IN_LOAD)).times(quarts));
    Optional<Fraction> byPints =
        need.perNinePints().map(lb -> lb.dividedBy(Fraction.of(PINTS_IN_LOAD)).times(jar.pints()));
    Optional<Fraction> average = need.perQuart().map(lb -> lb.times(quarts));
    boolean large = jar.compareTo(JarSize.PINT) > 0;
    Optional<Fraction> load = large ? byQuarts.or(() -> byPints) : byPints.or(() -> byQuarts);
    return load.or(() -> average)
        .map(
            about ->
                new ProducePerJar(
                    least(need, about, quarts), about, most(need, about, average, quarts)));
  }

  private static Fraction least(ProduceNeed need, Fraction about, Fraction quarts) {
    Optional<Fraction> best =
        need.container().map(c -> c.pounds().dividedBy(c.mostQuarts()).times(quarts));
    return Stream.of(Optional.of(about), best)
        .flatMap(Optional::stream)
        .min(Fraction::compareTo)
        .orElse(about);
  }

  private static Fraction most(
      ProduceNeed need, Fraction about, Optional<Fraction> average, Fraction quarts) {
    Optional<Fraction> worst =
        need.container().map(c -> c.pounds().dividedBy(c.fewestQuarts()).times(quarts));
    return Stream.of(Optional.of(about), average, worst)
        .flatMap(Optional::stream)
        .max(Fraction::compareTo)
        .orElse(about);
  }

  /** The produce for so many jars. */
  public ProduceRange forJars(int jars) {
    return new ProduceRange(
        Mass.pounds(least.times(jars)),
        Mass.pounds(about.times(jars)),
        Mass.pounds(most.times(jars)));
  }

  /** The jars from so much produce: surely, likely, at best. */
  public JarRange fromProduce(Mass produce) {
    Fraction pounds = produce.inPounds();
    return new JarRange(
        whole(pounds.dividedBy(most)),
        whole(pounds.dividedBy(about)),
        whole(pounds.dividedBy(least)));
  }

  private static int whole(Fraction jars) {
    return jars.floor().min(BigInteger.valueOf(Integer.MAX_VALUE)).intValueExact();
  }
}
