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
 * holds; a load that was not processed as tested fails with all its jars, sealed or not.
 */
public final class Judge {
  private final VerdictRules rules;

  public Judge(VerdictRules rules) {
    this.rules = rules;
  }

  /**
   * The verdict on a jar.
   *
   * @param sealed by the tests for a seal, after cooling
   * @param anyLow whether any jar of the load has lost liquid
   * @param now when the verdict is given: what could still be done may be over
   */
  public Judged judge(
      Required required,
      Observed seen,
      boolean sealed,
      Liquid lost,
      boolean anyLow,
      OffsetDateTime now) {
    Set<Finding> found = EnumSet.noneOf(Finding.class);
    found.addAll(seen.against(required));
    found.addAll(against(sealed, lost, seen.cloudy(), anyLow));
    if (found.isEmpty()) {
      found.add(Finding.SOUND);
    }
    Optional<OffsetDateTime> from = seen.countedFrom();
    List<VerdictRule> strictest = new ArrayList<>();
    Grade grade = Grade.SHELF;
    List<VerdictRule> all = rules.of(found);
    for (VerdictRule rule : all) {
      Grade here = gradeAt(rule, from, now);
      if (here.isStricterThan(grade)) {
        strictest.clear();
        grade = here;
      }
      if (here == grade) {
        strictest.add(rule);
      }
    }
    return new Judged(verdict(grade, all, from), strictest);
  }

  private static Set<Finding> against(boolean sealed, Liquid lost, Ticked cloudy, boolean anyLow) {
    Set<Finding> found = EnumSet.noneOf(Finding.class);
    if (!sealed) {
      found.add(Finding.NOT_SEALED);
    }
    switch (lost) {
      case NONE -> {}
      case SOME -> found.add(Finding.SOME_LOST);
      case HALF_OR_MORE -> found.add(Finding.HALF_LOST);
    }
    if (cloudy != Ticked.NO && lost != Liquid.NONE) {
      found.add(Finding.CLOUDY_AND_LOW);
    } else if (cloudy != Ticked.NO && !anyLow) {
      found.add(Finding.CLOUDY_NONE_LOW);
    }
    return found;
  }

  /** What the rule says while there is time, and that the jar is thrown away when there is none. */
  private static Grade gradeAt(
      VerdictRule rule, Optional<OffsetDateTime> from, OffsetDateTime now) {
    boolean over =
        switch (rule.verdict()) {
          case RECAN ->
              from.isEmpty() || now.isAfter(from.get().plusHours(rule.hours().getAsInt()));
          case REFRIGERATE -> from.isEmpty() || today(from, now).isAfter(lastDay(from.get(), rule));
          case SHELF, USE_FIRST, THROW_AWAY -> false;
        };
    return over ? Grade.THROW_AWAY : rule.verdict();
  }

  private static LocalDate today(Optional<OffsetDateTime> from, OffsetDateTime now) {
    return now.withOffsetSameInstant(from.orElse(now).getOffset()).toLocalDate();
  }

  private static LocalDate lastDay(OffsetDateTime from, VerdictRule rule) {
    return from.toLocalDate().plusDays(rule.days().getAsInt());
  }

  private static Verdict verdict(
      Grade grade, List<VerdictRule> all, Optional<OffsetDateTime> from) {
    Optional<LocalDate> eatBy =
        from.flatMap(f -> least(all, VerdictRule::days).map(f.toLocalDate()::plusDays));
    return switch (grade) {
      case SHELF -> new Verdict.Shelf();
      case USE_FIRST -> new Verdict.UseFirst();
      case REFRIGERATE -> new Verdict.Refrigerate(eatBy.orElseThrow());
      case RECAN -> {
        int hours = least(all, VerdictRule::hours).orElseThrow();
        yield new Verdict.Recan(from.orElseThrow().plusHours(hours), eatBy);
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
