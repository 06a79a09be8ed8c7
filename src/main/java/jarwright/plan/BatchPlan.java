package jarwright.plan;

import jarwright.problem.Place;
import jarwright.process.AcidKind;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.Product;
import jarwright.quantity.GaugePressure;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One batch as the plan asks for it, every word understood, nothing yet decided.
 *
 * @param places where each key stands in the plan; under {@code ""} the batch itself
 * @param position number of the batch in its plan, from 1
 * @param salt whether salt is wanted; empty where the plan does not say
 */
public record BatchPlan(
    String plan,
    int position,
    Map<String, Place> places,
    Product product,
    Optional<Pack> pack,
    JarSize jar,
    Amount amount,
    Optional<Method> method,
    Optional<GaugePressure> pressure,
    Optional<AcidKind> acid,
    Optional<Boolean> salt,
    Optional<Cover> cover,
    LocalDate date,
    Optional<LocalTime> start,
    Optional<LocalTime> finish,
    OptionalInt hands,
    Optional<String> canner,
    Notes notes) {
  public BatchPlan {
    places = Map.copyOf(places);
  }

  /** Its place alone: hashing all its parts by what the compiler makes slows every start. */
  @Override
  public int hashCode() {
    return plan.hashCode() * 31 + position;
  }

  /** What the household wants to remember; each may be empty. */
  public record Notes(String from, String shelf, String lids, String note) {}

  /** Where a key stands, or where the batch begins if the plan does not have the key. */
  public Place placeOf(String key) {
    return places.getOrDefault(key, places.get(""));
  }
}
