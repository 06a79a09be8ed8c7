package jarwright.process;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Strengths of sugar syrup, weakest first. */
public enum Syrup {
  VERY_LIGHT("very-light"),
  LIGHT("light"),
  MEDIUM("medium"),
  HEAVY("heavy"),
  VERY_HEAVY("very-heavy");

  private final String id;

  Syrup(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }

  public static Optional<Syrup> named(String id) {
    return Arrays.stream(values()).filter(s -> s.id.equals(id)).findFirst();
  }

  public static List<String> ids() {
    return Arrays.stream(values()).map(Syrup::id).toList();
  }

  @Override
  public String toString() {
    return id;
  }
}
