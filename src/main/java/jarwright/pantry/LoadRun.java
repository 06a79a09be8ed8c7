package jarwright.pantry;

import jarwright.process.Cooling;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A canner load has been processed.
 *
 * @param load counted from 1 within the lot
 */
public record LoadRun(int load, Required required, Observed seen, String note)
    implements Happening {
  public static final String KIND = "load";

  public LoadRun {
    if (load < 1) {
      throw new IllegalArgumentException("loads are counted from 1, not " + load);
    }
  }

  /**
   * From when its jars' seals may be tested; empty where something speaks against the load, whose
   * jars are then judged at once.
   */
  public Optional<OffsetDateTime> lookFrom() {
    return seen.against(required).isEmpty()
        ? seen.end().map(t -> t.plus(Cooling.LEAST))
        : Optional.empty();
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public Detail detail() {
    return seen.into(required.into(Detail.of("load", load))).with("note", note);
  }

  static LoadRun from(Detail detail) {
    return new LoadRun(
        detail.need("load", Integer::valueOf),
        Required.from(detail),
        Observed.from(detail),
        detail.text("note"));
  }
}
