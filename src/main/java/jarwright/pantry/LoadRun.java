package jarwright.pantry;

import jarwright.quantity.GaugePressure;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * How one canner load was processed, as the clock and the gauge were read.
 *
 * @param load counted from 1 within the lot
 * @param start when the clock was first started; empty where nobody wrote it down
 * @param lastStart when it was started the last time, where it had to be restarted
 * @param kept whether boil or pressure held for the whole time
 * @param lowest pressure seen on the gauge; empty where not read
 * @param restarts how often boil or pressure was lost and the whole time started again
 * @param cloudy whether the canner's water was cloudy or coloured afterwards
 * @param acid whether every jar got its acid
 * @param vented whether the pressure canner was vented for its full time
 */
public record LoadRun(
    int load,
    Required required,
    Optional<OffsetDateTime> start,
    Optional<OffsetDateTime> lastStart,
    Optional<OffsetDateTime> end,
    Ticked kept,
    Optional<GaugePressure> lowest,
    int restarts,
    Ticked cloudy,
    Ticked acid,
    Ticked vented,
    String note)
    implements Happening {
  public static final String KIND = "load";

  public LoadRun {
    if (load < 1) {
      throw new IllegalArgumentException("loads are counted from 1, not " + load);
    }
    if (restarts < 0) {
      throw new IllegalArgumentException("restarts are 0 or more, not " + restarts);
    }
  }

  /** The start of the run that has to be full: the last one; empty where it is not known. */
  public Optional<OffsetDateTime> fullRunFrom() {
    return restarts == 0 ? start : lastStart;
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public Detail detail() {
    return required
        .into(Detail.of("load", load))
        .with("start", start)
        .with("last-start", lastStart)
        .with("end", end)
        .with("kept", kept.word())
        .with("lowest", lowest)
        .with("restarts", restarts)
        .with("cloudy", cloudy.word())
        .with("acid", acid.word())
        .with("vented", vented.word())
        .with("note", note);
  }

  static LoadRun from(Detail detail) {
    return new LoadRun(
        detail.need("load", Integer::valueOf),
        Required.from(detail),
        detail.maybe("start", OffsetDateTime::parse),
        detail.maybe("last-start", OffsetDateTime::parse),
        detail.maybe("end", OffsetDateTime::parse),
        Ticked.parse(detail.text("kept")),
        detail.maybe("lowest", GaugePressure::parse),
        detail.need("restarts", Integer::valueOf),
        Ticked.parse(detail.text("cloudy")),
        Ticked.parse(detail.text("acid")),
        Ticked.parse(detail.text("vented")),
        detail.text("note"));
  }
}
