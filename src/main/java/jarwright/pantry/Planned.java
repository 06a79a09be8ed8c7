package jarwright.pantry;

import jarwright.batch.Batch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A lot has been planned. Planned again before any outcome, the later plan holds.
 *
 * @param jars made ready, numbered from 1
 * @param loads jars in each canner load, in order; their sum is {@code jars}
 */
public record Planned(LotFacts facts, int jars, List<Integer> loads, Required required)
    implements Happening {
  public static final String KIND = "planned";

  public Planned {
    loads = List.copyOf(loads);
    if (!facts.madeHere()) {
      throw new IllegalArgumentException("what was made elsewhere is brought in, not planned");
    }
    if (jars > JarNumbers.HIGHEST) {
      throw new IllegalArgumentException(jars + " jars are more than a lot can have");
    }
    if (loads.stream().anyMatch(n -> n < 1)
        || loads.stream().mapToLong(Integer::intValue).sum() != jars) {
      throw new IllegalArgumentException("loads " + loads + " do not add up to " + jars + " jars");
    }
  }

  /** The plan of a batch that goes into the canner in loads of so many jars. */
  public static Planned of(Batch batch, List<Integer> loads) {
    LotFacts facts =
        new LotFacts(
            batch.product().id(),
            batch.product().name(),
            batch.pack().id(),
            batch.jar().id(),
            Optional.of(batch.plan().date()),
            Optional.of(batch.useBy().date()),
            batch.plan().notes().shelf(),
            batch.plan().notes().from(),
            batch.plan().notes().lids(),
            batch.plan().notes().note(),
            true);
    return new Planned(facts, batch.jars(), loads, Required.of(batch));
  }

  /** The jars of one load, counted from 1; none where no such load is planned. */
  public JarNumbers inLoad(int load) {
    if (load < 1 || load > loads.size()) {
      return JarNumbers.NONE;
    }
    int before = loads.subList(0, load - 1).stream().mapToInt(Integer::intValue).sum();
    return JarNumbers.range(before + 1, before + loads.get(load - 1));
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public Detail detail() {
    String sizes = String.join("+", loads.stream().map(String::valueOf).toList());
    return required.into(facts.into(Detail.NONE).with("jars", jars).with("loads", sizes));
  }

  static Planned from(Detail detail) {
    return new Planned(
        LotFacts.from(detail, true),
        detail.need("jars", Integer::valueOf),
        detail.need("loads", Planned::sizes),
        Required.from(detail));
  }

  private static List<Integer> sizes(String text) {
    List<Integer> sizes = new ArrayList<>();
    for (String size : text.split("\\+")) {
      sizes.add(Integer.valueOf(size));
    }
    return sizes;
  }
}
