package jarwright.cli;

import jarwright.process.HighAltitude;
import jarwright.process.Method;
import jarwright.quantity.Altitude;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.util.Optional;

/** What is said of a method's times at a high altitude. */
final class HighText {
  private static final String ASK = ": ask your local extension service first.";

  private HighText() {}

  /** A sentence, or none where nothing is to be said. */
  static Optional<String> of(Method method, Altitude altitude) {
    String above = "Above " + HighAltitude.ABOVE.text(Style.english(Units.BOTH));
    boolean dial = method == Method.DIAL_GAUGE && altitude.compareTo(HighAltitude.ABOVE) > 0;
    return HighAltitude.of(method, altitude)
        .map(
            doubt ->
                switch (doubt) {
                  case LONGER_ELSEWHERE ->
                      above + " one state service boils longer than the guide" + ASK;
                  case NO_UPPER_END ->
                      above
                          + " the guide still has its pressure for a weighted gauge, but none for a"
                          + " dial gauge"
                          + ASK;
                })
        .or(
            () ->
                dial
                    ? Optional.of(above + " no dial-gauge pressure is tested.")
                    : Optional.empty());
  }
}
