package jarwright.process;

import jarwright.quantity.Fraction;
import jarwright.quantity.Volume;

/**
 * Water and sugar for one canner load.
 *
 * @param sugarPercent approximate sugar by weight
 * @param jars jars in the load
 * @param jar their size
 */
public record SyrupRow(
    Syrup syrup,
    int sugarPercent,
    int jars,
    JarSize jar,
    Volume water,
    Volume sugar,
    Source source) {

  /** The part of the load's amounts that so many jars of a size take, by content. */
  public Fraction share(int count, JarSize size) {
    return size.pints().times(count).dividedBy(jar.pints().times(jars));
  }
}
