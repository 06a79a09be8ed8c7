package jarwright.pantry;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A row of an old list: jars that were not made with the program.
 *
 * @param facts whose use-by date is worked out where the list gives none
 * @param packedBy the last day on which they can have been packed; empty where that is not known
 * @param dated whether the list itself gives the use-by date
 * @param known what the list says of their process and the like
 * @param vouched who vouches for them; empty where nobody does
 */
public record OldJars(
    LotFacts facts,
    Optional<LocalDate> packedBy,
    boolean dated,
    String known,
    Optional<Vouched> vouched,
    int jars) {
  public OldJars {
    if (packedBy.isPresent() != facts.packed().isPresent()) {
      throw new IllegalArgumentException("first and last day of packing go together");
    }
    JarNumbers.range(1, jars);
  }

  /** The same, vouched for where nobody did. */
  public OldJars orVouched(Optional<Vouched> word) {
    return new OldJars(facts, packedBy, dated, known, vouched.or(() -> word), jars);
  }

  /** Whether the ledger's event tells of such jars; a use-by date worked out may differ. */
  boolean isToldBy(LedgerEvent event) {
    return event.what() instanceof Imported imported
        && event.jars().size() == jars
        && imported.known().equals(known)
        && plain(imported.facts()).equals(plain(facts));
  }

  private LotFacts plain(LotFacts f) {
    Optional<LocalDate> useBy = dated ? f.useBy() : Optional.empty();
    return new LotFacts(
        f.product(),
        f.name(),
        f.pack(),
        f.jar(),
        f.packed(),
        useBy,
        f.shelf(),
        f.from(),
        f.lids(),
        f.note(),
        f.madeHere());
  }
}
