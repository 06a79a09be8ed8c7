package jarwright.batch;

import jarwright.process.JarSize;
import jarwright.process.ProduceNeed;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Pounds of fresh produce for one jar, from the guide's loads, averages and container yields.
 *
 * <p>The guide prints a weight for a canner load, from which one buys, and the yield of a bushel
 * and an average for a quart, by which produce at hand is judged. They differ by a little.
 *
 * @param least where the produce yields best: by the container, else the least figure printed
 * @param usual by the guide's average, within the container's range
 * @param worst where it yields worst: by the container, else the largest figure printed
 * @param about to buy, by the guide's canner load
 * @param most to buy: with so much nobody runs short
 */
public record ProducePerJar(
    Fraction least, Fraction usual, Fraction worst, Fraction about, Fraction most) {
  private static final int QUARTS_IN_LOAD = 7;
  private static final int PINTS_IN_LOAD = 9;

  /** None where the guide prints no weight. */
  public static Optional<ProducePerJar> of(ProduceNeed need, JarSize jar) {
    Optional<Fraction> byQuarts =
        need.perSevenQuarts()
            .map(lb -> lb.dividedBy(Fraction.of(QUARTS_IN_LOAD)).times(jar.quarts()));
    Optional<Fraction> byPints =
        need.perNinePints().map(lb -> lb.dividedBy(Fraction.of(PINTS_IN_LOAD)).times(jar.pints()));
    Optional<Fraction> average = need.perQuart().map(lb -> lb.times(jar.quarts()));
    boolean large = jar.compareTo(JarSize.PINT) > 0;
    Optional<Fraction> load = large ? byQuarts.or(() -> byPints) : byPints.or(() -> byQuarts);
    List<Fraction> figures = Stream.of(load, average).flatMap(Optional::stream).toList();
    if (figures.isEmpty()) {
      return Optional.empty();
    }
    Fraction about = load.or(() -> average).orElseThrow();
    // The averages are printed for quarts; of a pint the load of pints says more.
    Fraction usual = (large ? average : byPints.or(() -> average)).orElse(about);
    Fraction least =
        need.container()
            .map(c -> c.pounds().dividedBy(c.mostQuarts()).times(jar.quarts()))
            .orElse(smallest(figures));
    Fraction worst =
        need.container()
            .map(c -> c.pounds().dividedBy(c.fewestQuarts()).times(jar.quarts()))
            .orElse(largest(figures));
    return Optional.of(
        new ProducePerJar(
            least,
            largest(List.of(least, smallest(List.of(usual, worst)))),
            worst,
            about,
            largest(List.of(about, worst))));
  }

  private static Fraction smallest(List<Fraction> figures) {
    return figures.stream().min(Fraction::compareTo).orElseThrow();
  }

  private static Fraction largest(List<Fraction> figures) {
    return figures.stream().max(Fraction::compareTo).orElseThrow();
  }

  /** The produce to buy for so many jars. */
  public ProduceRange forJars(int jars) {
    return new ProduceRange(
        Mass.pounds(smallest(List.of(least, about)).times(jars)),
        Mass.pounds(about.times(jars)),
        Mass.pounds(most.times(jars)));
  }

  /** The jars from so much produce: surely, likely, at best. */
  public JarRange fromProduce(Mass produce) {
    Fraction pounds = produce.inPounds();
    return new JarRange(
        whole(pounds.dividedBy(worst)),
        whole(pounds.dividedBy(usual)),
        whole(pounds.dividedBy(least)));
  }

  private static int whole(Fraction jars) {
    return jars.floor().min(BigInteger.valueOf(Integer.MAX_VALUE)).intValueExact();
  }
}
