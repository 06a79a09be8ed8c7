package jarwright.pantry;

import java.util.Optional;

/**
 * A planned lot was never made.
 *
 * @param why may be empty
 */
public record Cancelled(String why) implements Happening {
  public static final String KIND = "cancelled";

  /** Why a lot cannot be cancelled; empty if it can. */
  public static Optional<String> hindrance(Lot lot) {
    if (lot.cancelled().isPresent()) {
      return Optional.of("is cancelled already");
    }
    return lot.isFrozen()
        ? Optional.of("is not only planned: something has been recorded of it")
        : Optional.empty();
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public Detail detail() {
    return Detail.of("why", why);
  }

  static Cancelled from(Detail detail) {
    return new Cancelled(detail.text("why"));
  }
}
