package jarwright.process;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Whether the food goes into the jar raw or heated. */
public enum Pack {
  RAW("raw"),
  HOT("hot"),
  /** One printed row that serves both packs; never a cook's choice. */
  RAW_OR_HOT("raw-or-hot");

  private final String id;

  Pack(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }

  /** Whether a table row for this pack holds for the pack that is used. */
  public boolean covers(Pack used) {
    return this == RAW_OR_HOT || this == used;
  }

  public static Optional<Pack> named(String id) {
    return Arrays.stream(values()).filter(p -> p.id.equals(id)).findFirst();
  }

  /** The packs that a plan may name. */
  public static List<String> choices() {
    return List.of(RAW.id, HOT.id);
  }

  @Override
  public String toString() {
    return id;
  }
}
