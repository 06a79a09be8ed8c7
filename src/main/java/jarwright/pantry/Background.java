package jarwright.pantry;

import java.util.Optional;

/**
 * What is the same for all jars of a lot and may change with its events.
 *
 * @param known what an old list tells of it in words; empty for lots that were planned
 * @param withdrawn the last finding of spoilage that was taken back; it must not vanish unseen
 */
public record Background(Origin origin, String known, Optional<Reason.Withdrawn> withdrawn) {
  public static final Background PLAIN =
      new Background(new Origin.MadeHere(), "", Optional.empty());
}
