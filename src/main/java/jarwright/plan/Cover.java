package jarwright.plan;

import jarwright.process.Syrup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The liquid that covers fruit: a syrup, plain water, or fruit juice. */
public record Cover(String id) {
  public static final Cover WATER = new Cover("water");
  public static final Cover JUICE = new Cover("juice");

  public static Optional<Cover> named(String id) {
    return ids().contains(id) ? Optional.of(new Cover(id)) : Optional.empty();
  }

  public static List<String> ids() {
    List<String> ids = new ArrayList<>(Syrup.ids());
    ids.add(WATER.id);
    ids.add(JUICE.id);
    return List.copyOf(ids);
  }

  /** The strength of syrup, where it is a syrup. */
  public Optional<Syrup> syrup() {
    return Syrup.named(id);
  }
}
