package jarwright.pantry;

import jarwright.process.TestedProcess;
import jarwright.quantity.GaugePressure;
import java.util.Optional;

/**
 * What the tested process asks of a load.
 *
 * @param minutes at a full boil, or at no less than the pressure
 * @param pressure present for pressure canners, which are also to be vented
 * @param acid whether every jar gets measured acid
 */
public record Required(int minutes, Optional<GaugePressure> pressure, boolean acid) {
  public Required {
    if (minutes < 1) {
      throw new IllegalArgumentException("a process takes a minute or more, not " + minutes);
    }
  }

  public static Required of(TestedProcess process, boolean acid) {
    return new Required(process.minutes(), process.pressure(), acid);
  }

  Detail into(Detail detail) {
    return detail
        .with("minutes", minutes)
        .with("pressure", pressure)
        .with("acid-needed", acid ? "yes" : "");
  }

  static Required from(Detail detail) {
    return new Required(
        detail.need("minutes", Integer::valueOf),
        detail.maybe("pressure", GaugePressure::parse),
        detail.text("acid-needed").equals("yes"));
  }
}
