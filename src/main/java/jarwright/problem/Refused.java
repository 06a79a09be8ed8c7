package jarwright.problem;

import java.util.List;
import java.util.stream.Collectors;

/** The input is refused, with every problem found in it. Nothing has been written. */
public final class Refused extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  public Refused(List<Problem> problems) {
    super(problems.stream().map(Problem::text).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  public Refused(Place where, String what, String remedy) {
    this(List.of(new Problem(where, what, remedy)));
  }

  public List<Problem> problems() {
    return problems;
  }
}
