package jarwright.water;

import jarwright.process.JarSize;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The canner loads that the guide itself works with: the most that is planned unasked. */
public final class GuideLoads {
  private final Map<JarSize, Load> loads = new EnumMap<>(JarSize.class);

  /**
   * The guide's load of one size.
   *
   * @param layer most jars standing side by side
   * @param layers most layers in a tall pressure canner
   */
  public record Load(JarSize jar, int layer, int layers) {
    public Load {
      if (layer < 1 || layers < 1) {
        throw new IllegalArgumentException("a load has a jar and a layer at least");
      }
    }
  }

  /**
   * Takes one entry for each jar size.
   *
   * @throws IllegalArgumentException when a size is missing or doubled
   */
  public GuideLoads(List<Load> loads) {
    for (Load load : loads) {
      if (this.loads.put(load.jar(), load) != null) {
        throw new IllegalArgumentException("two entries for " + load.jar());
      }
    }
    if (this.loads.size() < JarSize.values().length) {
      throw new IllegalArgumentException("an entry for each of " + JarSize.ids());
    }
  }

  public Load of(JarSize jar) {
    return loads.get(jar);
  }
}
