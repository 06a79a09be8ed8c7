package jarwright.process;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The acids of known strength that the guide doses by the jar. */
public enum AcidKind {
  CITRIC_ACID("citric acid"),
  BOTTLED_LEMON_JUICE("bottled lemon juice"),
  VINEGAR("vinegar 5%");

  private final String id;

  AcidKind(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }

  public static Optional<AcidKind> named(String id) {
    return Arrays.stream(values()).filter(a -> a.id.equals(id)).findFirst();
  }

  public static List<String> ids() {
    return Arrays.stream(values()).map(AcidKind::id).toList();
  }

  @Override
  public String toString() {
    return id;
  }
}
