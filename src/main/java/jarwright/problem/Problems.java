package jarwright.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Collects problems while reading goes on, so that all are shown at once. Beyond {@value #MOST}
 * they are counted only: nobody mends more at a time, and a file of another kind has one in every
 * line.
 */
public final class Problems {
  private static final int MOST = 100;
  private static final Comparator<Problem> IN_ORDER =
      Comparator.comparing((Problem p) -> p.where().file())
          .thenComparingInt(p -> p.where().line())
          .thenComparingInt(p -> p.where().column());

  private final List<Problem> found = new ArrayList<>();
  private final AtomicInteger more = new AtomicInteger();

  public void add(Place where, String what, String remedy) {
    add(new Problem(where, what, remedy));
  }

  public void addAll(List<Problem> problems) {
    problems.forEach(this::add);
  }

  private void add(Problem problem) {
    if (isFull()) {
      more.incrementAndGet();
    } else {
      found.add(problem);
    }
  }

  /** Whether no more are kept, so that reading on is of no use. */
  public boolean isFull() {
    return found.size() == MOST;
  }

  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** How many were told, those not kept included. */
  public int count() {
    return found.size() + more.get();
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
      List<Problem> told = new ArrayList<>(found.stream().sorted(IN_ORDER).toList());
      if (isFull()) {
        Place file = Place.wholeFile(told.get(told.size() - 1).where().file());
        told.add(
            new Problem(
                file,
                "only the first " + MOST + " problems are shown, and there may be more",
                "mend these first, then try again"));
      }
      throw new Refused(told);
    }
  }
}
