package jarwright.files;

import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.quantity.Altitude;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Understands the altitude of a kitchen, in a file or on the command line. */
public final class AltitudeWord {
  static final String KEY = "altitude";
  private static final Altitude LOWEST = Altitude.metres(-450);
  private static final Altitude HIGHEST = Altitude.metres(6_000);

  private AltitudeWord() {}

  /** The altitude under the key; none, or a problem, otherwise. */
  static Optional<Altitude> read(Fields fields, String key) {
    Optional<Altitude> altitude = fields.amount(key, Altitude::parse, "420 m or 1400 ft");
    if (altitude.isPresent()
        && (altitude.get().compareTo(LOWEST) < 0 || altitude.get().compareTo(HIGHEST) > 0)) {
      fields.problem(key, "nobody cooks at " + altitude.get(), "check number and unit");
      return Optional.empty();
    }
    return altitude;
  }

  /**
   * An altitude written alone.
   *
   * @param where what it was written into, and
   * @param key under which name, for messages
   * @throws Refused where it cannot be understood, or can be in two ways
   */
  public static Altitude read(Place where, String key, String text) throws Refused {
    Problems problems = new Problems();
    Written value = new Written.Text(where, text, false);
    Written.Keys keys = new Written.Keys(where, Map.of(key, new Written.Entry(where, value)));
    Optional<Altitude> altitude =
        read(new Fields(keys, "an altitude", List.of(key), Map.of(), problems), key);
    problems.refuse();
    return altitude.orElseThrow(() -> new IllegalArgumentException("no altitude, no problem"));
  }
}
