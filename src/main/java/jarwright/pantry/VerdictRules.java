package jarwright.pantry;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** All rules for verdicts. Total: every finding has a rule. */
public final class VerdictRules {
  private final List<VerdictRule> rules;

  /**
   * @throws IllegalArgumentException where an id comes twice, a finding has no rule, or something
   *     other than a sound jar may go on the shelf like one
   */
  public VerdictRules(List<VerdictRule> rules) {
    this.rules = List.copyOf(rules);
    Set<String> ids = new HashSet<>();
    for (VerdictRule rule : rules) {
      if (!ids.add(rule.id())) {
        throw new IllegalArgumentException("the rule " + rule.id() + " comes twice");
      }
      if ((rule.finding() == Finding.SOUND) != (rule.verdict() == Grade.SHELF)) {
        throw new IllegalArgumentException(
            "the rule " + rule.id() + ": a sound jar goes on the shelf, and nothing else does");
      }
    }
    Set<Finding> told = rules.stream().map(VerdictRule::finding).collect(Collectors.toSet());
    for (Finding finding : Finding.values()) {
      if (!told.contains(finding)) {
        throw new IllegalArgumentException("no rule says what to do: " + finding.word());
      }
    }
  }

  /** In the order of the table. */
  public List<VerdictRule> all() {
    return rules;
  }

  /** The rule that the ledger remembers; empty where it is no longer in the table. */
  public Optional<VerdictRule> byId(String id) {
    return rules.stream().filter(r -> r.id().equals(id)).findFirst();
  }

  List<VerdictRule> of(Set<Finding> findings) {
    return rules.stream().filter(r -> findings.contains(r.finding())).toList();
  }
}
