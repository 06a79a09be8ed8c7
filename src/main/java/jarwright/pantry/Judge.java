package jarwright.pantry;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

/**
 * Gives each jar its verdict by the rules. Where rules or their sources differ the strictest one
 * holds; a jar that was not processed as tested fails, sealed or not.
 */
public final class Judge {
  private final VerdictRules rules;

  public Judge(VerdictRules rules) {
    this.rules = rules;
  }

  /**
   * Where and since when a jar was kept cold before it was told of.
   *
   * @param frozen else refrigerated
   */
  public record Chilled(OffsetDateTime since, boolean frozen) {}

  /**
   * The verdict on a jar; empty while nothing speaks against it and nobody has seen how it came
   * out.
   *
   * @param seen once it had cooled
   * @param chilled empty where it stood in the room
   * @param now when the verdict is given: what could still be done may be over
   */
  public Optional<Judged> judge(
      LoadRun run, int jar, Optional<Seen> seen, Optional<Chilled> chilled, OffsetDateTime now) {
    Set<Finding> found = EnumSet.noneOf(Finding.class);
    found.addAll(run.against(jar));
    seen.ifPresent(s -> found.addAll(s.against()));
    if (found.isEmpty() && seen.isEmpty()) {
      return Optional.empty();
    }
    if (found.isEmpty()) {
      found.add(Finding.SOUND);
    }
    return Optional.of(new Case(run, chilled, now).judge(rules, found));
  }

  /** One jar's hours. */
  private record Case(LoadRun run, Optional<Chilled> chilled, OffsetDateTime now) {

    Judged judge(VerdictRules rules, Set<Finding> found) {
      List<VerdictRule> all = rules.of(found);
      List<VerdictRule> strictest = new ArrayList<>();
      Grade grade = Grade.SHELF;
      for (VerdictRule rule : all) {
        Grade here = grade(rule);
        if (here.isStricterThan(grade)) {
          strictest.clear();
          grade = here;
        }
        if (here == grade) {
          strictest.add(rule);
        }
      }
      if (grade != Grade.RECAN || run.required().recan()) {
        return new Judged(verdict(grade, all), strictest);
      }
      List<VerdictRule> cold = rules.of(EnumSet.of(Finding.NO_HOT_PACK));
      strictest.addAll(cold);
      all = new ArrayList<>(all);
      all.addAll(cold);
      return new Judged(verdict(Grade.REFRIGERATE, all), strictest);
    }

    private Optional<OffsetDateTime> from() {
      return run.seen().countedFrom();
    }

    /**
     * What the rule says while there is time, and that the jar is thrown away when there is none.
     */
    private Grade grade(VerdictRule rule) {
      return switch (rule.verdict()) {
        case SHELF, USE_FIRST, THROW_AWAY -> rule.verdict();
        case REFRIGERATE, FREEZER -> eatable(rule) ? cold() : Grade.THROW_AWAY;
        case RECAN -> {
          OffsetDateTime until = chilled.map(Chilled::since).orElse(now);
          if (from().isEmpty()
              || until.isAfter(from().get().plusHours(rule.hours().getAsInt()))
              || !eatable(rule)) {
            yield Grade.THROW_AWAY;
          }
          yield chilled.isPresent() ? cold() : Grade.RECAN;
        }
      };
    }

    private Grade cold() {
      return chilled.filter(Chilled::frozen).isPresent() ? Grade.FREEZER : Grade.REFRIGERATE;
    }

    /** What is frozen keeps; what is refrigerated has its days. */
    private boolean eatable(VerdictRule rule) {
      return cold() == Grade.FREEZER
          || rule.days().isEmpty()
          || from().filter(t -> !today(t).isAfter(lastDay(t, rule))).isPresent();
    }

    private LocalDate today(OffsetDateTime from) {
      return now.withOffsetSameInstant(from.getOffset()).toLocalDate();
    }

    private static LocalDate lastDay(OffsetDateTime from, VerdictRule rule) {
      return from.toLocalDate().plusDays(rule.days().getAsInt());
    }

    private Verdict verdict(Grade grade, List<VerdictRule> all) {
      Optional<LocalDate> eatBy =
          from().flatMap(f -> least(all, VerdictRule::days).map(f.toLocalDate()::plusDays));
      return switch (grade) {
        case SHELF -> new Verdict.Shelf();
        case USE_FIRST -> new Verdict.UseFirst();
        case REFRIGERATE -> new Verdict.Refrigerate(eatBy.orElseThrow());
        case FREEZER -> new Verdict.Freezer();
        case RECAN -> {
          int hours = least(all, VerdictRule::hours).orElseThrow();
          yield new Verdict.Recan(from().orElseThrow().plusHours(hours), eatBy);
        }
        case THROW_AWAY -> new Verdict.ThrowAway();
      };
    }

    private static Optional<Integer> least(
        List<VerdictRule> rules, Function<VerdictRule, OptionalInt> limit) {
      return rules.stream()
          .map(limit)
          .filter(OptionalInt::isPresent)
          .map(OptionalInt::getAsInt)
          .min(Integer::compare);
    }
  }
}
