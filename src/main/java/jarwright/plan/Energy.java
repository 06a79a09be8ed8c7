package jarwright.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What heats a pot. */
public enum Energy {
  INDUCTION,
  ELECTRIC,
  GAS;

  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<Energy> named(String id) {
    return Arrays.stream(values()).filter(e -> e.id().equals(id)).findFirst();
  }

  public static List<String> ids() {
    return Arrays.stream(values()).map(Energy::id).toList();
  }
}
