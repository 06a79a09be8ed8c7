package jarwright.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects problems while reading goes on, so that all are shown at once. */
public final class Problems {
  private static final Comparator<Problem> IN_ORDER =
      Comparator.comparing((Problem p) -> p.where().file())
          .thenComparingInt(p -> p.where().line())
          .thenComparingInt(p -> p.where().column());

  private final List<Problem> found = new ArrayList<>();

  public void add(Place where, String what, String remedy) {
    found.add(new Problem(where, what, remedy));
  }

  public void addAll(List<Problem> problems) {
    found.addAll(problems);
  }

  public boolean isEmpty() {
    return found.isEmpty();
  }

  public List<Problem> list() {
    return List.copyOf(found);
  }

  /**
   * Does nothing where no problem was found.
   *
   * @throws Refused with all problems, in the order of the files' lines
   */
  public void refuse() throws Refused {
    if (!found.isEmpty()) {
      throw new Refused(found.stream().sorted(IN_ORDER).toList());
    }
  }
}
