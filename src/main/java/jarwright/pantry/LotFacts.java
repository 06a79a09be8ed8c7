package jarwright.pantry;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What is the same for all jars of a lot.
 *
 * @param product id in the process tables, or what an old list called it
 * @param name as it is shown
 * @param pack raw or hot; empty where not known
 * @param jar size as the tables name it; empty where not known
 * @param packed empty for old jars whose day nobody knows
 * @param useBy empty where {@code packed} is
 * @param shelf where the jars are to stand
 * @param from where the produce came from
 * @param lids which lids were used
 * @param madeHere false for jars from an old list, whose process nobody can vouch for
 */
public record LotFacts(
    String product,
    String name,
    String pack,
    String jar,
    Optional<LocalDate> packed,
    Optional<LocalDate> useBy,
    String shelf,
    String from,
    String lids,
    String note,
    boolean madeHere) {
  public LotFacts {
    if (product.isBlank()) {
      throw new IllegalArgumentException("a lot needs a product");
    }
  }

  /** The name it is shown by: that of the product where it has none of its own. */
  public String shownName() {
    return name.isEmpty() ? product : name;
  }

  Detail into(Detail detail) {
    return detail
        .with("product", product)
        .with("name", name)
        .with("pack", pack)
        .with("size", jar)
        .with("packed", packed)
        .with("use-by", useBy)
        .with("shelf", shelf)
        .with("from", from)
        .with("lids", lids)
        .with("note", note);
  }

  static LotFacts from(Detail detail, boolean madeHere) {
    return new LotFacts(
        detail.need("product", t -> t),
        detail.text("name"),
        detail.text("pack"),
        detail.text("size"),
        detail.maybe("packed", LocalDate::parse),
        detail.maybe("use-by", LocalDate::parse),
        detail.text("shelf"),
        detail.text("from"),
        detail.text("lids"),
        detail.text("note"),
        madeHere);
  }
}
