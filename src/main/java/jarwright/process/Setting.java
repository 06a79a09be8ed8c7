package jarwright.process;

import jarwright.quantity.Altitude;

/**
 * What a process is asked for.
 *
 * @param pack raw or hot, as a cook packs; the row that serves both is no pack of its own
 */
public record Setting(Product product, Method method, Pack pack, JarSize jar, Altitude altitude) {
  public Setting {
    if (pack == Pack.RAW_OR_HOT) {
      throw new IllegalArgumentException("food is packed raw or hot, not " + pack);
    }
  }
}
