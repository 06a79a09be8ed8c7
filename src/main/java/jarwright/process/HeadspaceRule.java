package jarwright.process;

import java.util.ArrayList;
import java.util.List;

/** The headspace of a product, where it may hang on pack and jar. */
public record HeadspaceRule(List<Case> cases) {
  public HeadspaceRule {
    cases = List.copyOf(cases);
    if (cases.isEmpty()) {
      throw new IllegalArgumentException("a product needs its headspace");
    }
  }

  /**
   * One printed figure.
   *
   * @param when words joined by hyphens: a pack, a jar, or what is measured; empty for always
   */
  public record Case(String when, Headspace headspace) {
    boolean holds(Pack pack, JarSize jar) {
      List<String> words = List.of(when.split("-", -1));
      boolean packFits =
          words.stream().noneMatch(Pack.choices()::contains) || words.contains(pack.id());
      boolean namesJar = words.contains(JarSize.PINT.id()) || words.contains(JarSize.QUART.id());
      return packFits && (!namesJar || words.contains(servedAs(jar).id()));
    }

    /** The size printed for small or large beans that a jar belongs to. */
    private static JarSize servedAs(JarSize jar) {
      return jar.compareTo(JarSize.PINT) <= 0 ? JarSize.PINT : JarSize.QUART;
    }
  }

  /** Every figure that holds for the pack and jar: one, or one for solids and one for liquid. */
  public List<Headspace> of(Pack pack, JarSize jar) {
    List<Headspace> found = new ArrayList<>();
    for (Case one : cases) {
      if (one.holds(pack, jar)) {
        found.add(one.headspace());
      }
    }
    return List.copyOf(found);
  }
}
