package jarwright.problem;

import java.util.ArrayList;
import java.util.List;

/** Collects problems while reading goes on, so that all are shown at once. */
public final class Problems {
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

  /** Does nothing where no problem was found. */
  public void refuse() throws Refused {
    if (!found.isEmpty()) {
      throw new Refused(found);
    }
  }
}
