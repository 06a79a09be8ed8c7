package jarwright.process;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How jars are processed. Each has tables of its own. */
public enum Method {
  BOILING_WATER("boiling-water"),
  DIAL_GAUGE("dial-gauge"),
  WEIGHTED_GAUGE("weighted-gauge");

  private final String id;

  Method(String id) {
    this.id = id;
  }

  /** As tables and plans write it. */
  public String id() {
    return id;
  }

  public boolean isPressure() {
    return this != BOILING_WATER;
  }

  public static Optional<Method> named(String id) {
    return Arrays.stream(values()).filter(m -> m.id.equals(id)).findFirst();
  }

  public static List<String> ids() {
    return Arrays.stream(values()).map(Method::id).toList();
  }

  @Override
  public String toString() {
    return id;
  }
}
