package jarwright.plan;

import jarwright.process.Method;
import jarwright.quantity.Altitude;
import jarwright.quantity.Fraction;
import jarwright.quantity.Length;
import jarwright.quantity.Units;
import jarwright.quantity.Volume;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The household's kitchen: what holds for all its batches.
 *
 * @param household name printed on sheets, may be empty
 * @param labelStock id of the label stock; empty for the usual one of the paper
 * @param offsetRight the printer's correction on label sheets, positive to the right
 * @param offsetDown the same, positive downwards
 * @param sheetScale the factor that brings its lengths right; 1 for a printer that prints true
 * @param link base address for QR codes; empty for plain text
 * @param monthsToUseBy 1 to 18
 * @param burners places on the stove; empty where not said
 * @param zone where the clock stands; empty where not said
 * @param clock how times of day are shown
 * @param pots sizes of the pots that food is cooked in; empty where not said
 * @param times how long hand work takes here, where the household knows better; the last of two for
 *     the same work counts
 */
public record Kitchen(
    String household,
    Altitude altitude,
    Paper paper,
    Units units,
    String language,
    List<Canner> canners,
    Optional<String> labelStock,
    Length offsetRight,
    Length offsetDown,
    Fraction sheetScale,
    Optional<String> link,
    int monthsToUseBy,
    OptionalInt burners,
    Optional<ZoneId> zone,
    ClockHours clock,
    List<Volume> pots,
    List<OwnTime> times) {
  public Kitchen {
    pots = List.copyOf(pots);
    canners = List.copyOf(canners);
    times = List.copyOf(times);
  }

  /** A kitchen that has no pots or times of its own, and the clock that is usual with its paper. */
  public Kitchen(
      String household,
      Altitude altitude,
      Paper paper,
      Units units,
      String language,
      List<Canner> canners,
      Optional<String> labelStock,
      Length offsetRight,
      Length offsetDown,
      Fraction sheetScale,
      Optional<String> link,
      int monthsToUseBy,
      OptionalInt burners,
      Optional<ZoneId> zone) {
    this(
        household,
        altitude,
        paper,
        units,
        language,
        canners,
        labelStock,
        offsetRight,
        offsetDown,
        sheetScale,
        link,
        monthsToUseBy,
        burners,
        zone,
        ClockHours.usualWith(paper),
        List.of(),
        List.of());
  }

  /** The same kitchen with its print-outs in another language. */
  public Kitchen in(String other) {
    return new Kitchen(
        household,
        altitude,
        paper,
        units,
        other,
        canners,
        labelStock,
        offsetRight,
        offsetDown,
        sheetScale,
        link,
        monthsToUseBy,
        burners,
        zone,
        clock,
        pots,
        times);
  }

  public Optional<Canner> canner(String name) {
    return canners.stream().filter(c -> c.name().equals(name)).findFirst();
  }

  public List<Canner> cannersFor(Method method) {
    return canners.stream().filter(c -> c.method() == method).toList();
  }
}
