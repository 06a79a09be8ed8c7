package jarwright.pantry;

import java.util.Optional;

/**
 * Somebody vouches for a lot that was not made with the program.
 *
 * @param who gives their word
 * @param source the tested process that was followed, in words
 */
public record Vouched(String who, String source, ToldProcess process) implements Happening {
  public static final String KIND = "vouched";

  public Vouched {
    if (who.isBlank() || source.isBlank()) {
      throw new IllegalArgumentException("to vouch for jars takes a name and a source");
    }
  }

  /** What the jars of a lot are once it is recorded, by the tables. */
  public Origin of(Lot lot, Foods foods) {
    return lot.facts().madeHere()
        ? new Origin.MadeHere()
        : foods.origin(lot.facts(), lot.background().known(), Optional.of(this));
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public Detail detail() {
    return process.into(Detail.of("who", who).with("source", source));
  }

  static Vouched from(Detail detail) {
    return new Vouched(
        detail.need("who", t -> t), detail.need("source", t -> t), ToldProcess.from(detail));
  }
}
