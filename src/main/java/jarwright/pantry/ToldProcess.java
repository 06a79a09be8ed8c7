package jarwright.pantry;

import jarwright.process.Method;
import jarwright.quantity.Altitude;
import jarwright.quantity.GaugePressure;
import java.util.Optional;

/**
 * How jars from elsewhere are said to have been processed.
 *
 * @param minutes at a full boil, or at no less than the pressure
 * @param acid whether every jar got measured acid; blank where it is not said
 */
public record ToldProcess(
    Optional<Method> method,
    Optional<Integer> minutes,
    Optional<GaugePressure> pressure,
    Optional<Altitude> altitude,
    Ticked acid) {
  /** Of which nothing is said. */
  public static final ToldProcess NOTHING =
      new ToldProcess(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Ticked.BLANK);

  Detail into(Detail detail) {
    return detail
        .with("method", method)
        .with("minutes", minutes)
        .with("pressure", pressure)
        .with("altitude", altitude)
        .with("acid", acid.word());
  }

  static ToldProcess from(Detail detail) {
    return new ToldProcess(
        detail.maybe("method", ToldProcess::method),
        detail.maybe("minutes", Integer::valueOf),
        detail.maybe("pressure", GaugePressure::parse),
        detail.maybe("altitude", Altitude::parse),
        Ticked.parse(detail.text("acid")));
  }

  private static Method method(String word) {
    return Method.named(word)
        .orElseThrow(() -> new IllegalArgumentException("\"" + Shown.of(word) + "\" is no method"));
  }
}
