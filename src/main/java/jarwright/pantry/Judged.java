package jarwright.pantry;

import java.util.List;

/**
 * A verdict and why.
 *
 * @param because the rules that decided it; milder ones that also applied are left out
 */
public record Judged(Verdict verdict, List<VerdictRule> because) {
  public Judged {
    because = List.copyOf(because);
  }

  /** Whether the jar is thrown away for no other reason than that it is too late. */
  public boolean isLate() {
    return verdict.grade() == Grade.THROW_AWAY
        && because.stream().noneMatch(r -> r.verdict() == Grade.THROW_AWAY);
  }
}
