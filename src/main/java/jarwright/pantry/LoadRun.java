package jarwright.pantry;

import jarwright.process.Cooling;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.Set;

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

  /** What speaks against one of its jars before its seal is looked at. */
  Set<Finding> against(int jar) {
    return seen.against(required, jar);
  }

  /**
   * From when its jars' seals can be tested; empty where nothing tells when the load was processed.
   */
  public Optional<OffsetDateTime> lookFrom() {
    return seen.countedFrom().map(t -> t.plus(Cooling.LEAST));
  }

  /** Where a jar stands when the load is recorded; empty where it is judged at once. */
  Optional<Standing> standing(int jar) {
    return against(jar).isEmpty()
        ? lookFrom().map(t -> new Standing.Cooling(load, t))
        : Optional.empty();
  }

  /**
   * Whether this tells the same as the other does, or the same and something more that is known
   * only once the canner is open.
   */
  boolean tellsOn(LoadRun before) {
    Observed then = before.seen;
    boolean cloudy = seen.cloudy() == then.cloudy() || then.cloudy() == Ticked.BLANK;
    LoadRun more =
        new LoadRun(
            before.load, before.required, then.with(seen.cloudy(), seen.otherwise()), before.note);
    return cloudy && seen.otherwise().holds(then.otherwise()) && equals(more);
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
