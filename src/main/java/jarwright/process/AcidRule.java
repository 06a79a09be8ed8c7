package jarwright.process;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the guide says of acid in a product. */
public sealed interface AcidRule {

  /** Whether a plan has to name an acid. */
  default boolean needsChoice() {
    return !choices().isEmpty();
  }

  /** The acids that a plan may name. */
  default List<AcidKind> choices() {
    return List.of();
  }

  /** No acid belongs into the product. */
  record None() implements AcidRule {}

  /** The acid is part of a fixed formula and is never changed. */
  record InFormula() implements AcidRule {}

  /** The acid grows in the brine. */
  record Fermented() implements AcidRule {}

  /** Every jar gets acid; each kind is dosed for one or more jar sizes. */
  record PerJar(List<AcidDose> doses) implements AcidRule {
    public PerJar {
      doses = List.copyOf(doses);
    }

    @Override
    public List<AcidKind> choices() {
      return doses.stream().map(AcidDose::kind).distinct().toList();
    }

    /**
     * The dose for a jar: as printed for its size, else the largest of the proportions that the
     * printed sizes give, so that it is never weaker than any of them.
     */
    public Optional<AcidDose> dose(AcidKind kind, JarSize jar) {
      List<AcidDose> ofKind = doses.stream().filter(d -> d.kind() == kind).toList();
      return ofKind.stream()
          .filter(d -> d.jar() == jar)
          .findFirst()
          .or(
              () ->
                  ofKind.stream()
                      .map(d -> d.forJar(jar))
                      .max(Comparator.comparing(AcidDose::amount)));
    }
  }
}
