package jarwright.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The paper in the household's printer. */
public enum Paper {
  LETTER("letter"),
  A4("a4");

  private final String id;

  Paper(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }

  public static Optional<Paper> named(String id) {
    return Arrays.stream(values()).filter(p -> p.id.equals(id)).findFirst();
  }

  public static List<String> ids() {
    return Arrays.stream(values()).map(Paper::id).toList();
  }
}
