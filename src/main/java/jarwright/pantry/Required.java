package jarwright.pantry;

import jarwright.batch.Batch;
import jarwright.process.Method;
import jarwright.quantity.GaugePressure;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What the tested process asks of a load.
 *
 * @param minutes at a full boil, or at no less than the pressure
 * @param pressure present for pressure canners, which are also to be vented
 * @param dial whether the pressure is read from a dial gauge, which is to be tested every year
 * @param gaugeTested the day of the gauge's last test, as the kitchen had it; empty where not known
 * @param recan whether what did not seal may be canned again
 */
public record Required(
    int minutes,
    Optional<GaugePressure> pressure,
    AcidNeed acid,
    boolean dial,
    Optional<LocalDate> gaugeTested,
    boolean recan) {
  public Required {
    if (minutes < 1) {
      throw new IllegalArgumentException("a process takes a minute or more, not " + minutes);
    }
    if (dial && pressure.isEmpty()) {
      throw new IllegalArgumentException("a dial gauge needs the pressure that it is to show");
    }
  }

  /** A process without a dial gauge, after which an unsealed jar may be canned again. */
  public Required(int minutes, Optional<GaugePressure> pressure, boolean acid) {
    this(
        minutes, pressure, acid ? AcidNeed.EACH_JAR : AcidNeed.NONE, false, Optional.empty(), true);
  }

  static Required of(Batch batch) {
    boolean dial = batch.method() == Method.DIAL_GAUGE;
    return new Required(
        batch.process().minutes(),
        batch.process().pressure(),
        AcidNeed.of(batch),
        dial,
        dial ? batch.canner().gaugeTested() : Optional.empty(),
        batch.recan());
  }

  /** Whether somebody has to say that the gauge was tested within a year before the given day. */
  public boolean asksForGaugeTest(LocalDate day) {
    return dial && gaugeTested.filter(d -> holds(d, day)).isEmpty();
  }

  private static boolean holds(LocalDate tested, LocalDate day) {
    return !tested.isAfter(day) && !day.isAfter(tested.plusYears(1));
  }

  Detail into(Detail detail) {
    return detail
        .with("minutes", minutes)
        .with("pressure", pressure)
        .with("acid-needed", acid.word())
        .with("dial", dial ? "yes" : "")
        .with("gauge-tested", gaugeTested)
        .with("recan", recan ? "" : "no");
  }

  static Required from(Detail detail) {
    return new Required(
        detail.need("minutes", Integer::valueOf),
        detail.maybe("pressure", GaugePressure::parse),
        AcidNeed.parse(detail.text("acid-needed")),
        yes(detail, "dial", false),
        detail.maybe("gauge-tested", LocalDate::parse),
        yes(detail, "recan", true));
  }

  private static boolean yes(Detail detail, String key, boolean otherwise) {
    return detail.maybe(key, Ticked::parse).map(t -> t == Ticked.YES).orElse(otherwise);
  }
}
