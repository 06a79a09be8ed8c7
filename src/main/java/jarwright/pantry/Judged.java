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
}
