package jarwright.pantry;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a jar shows at a given time. Every list, page, label, print-out and refusal shows this and
 * nothing of its own.
 *
 * @param reasons the one that decides first; none where the standing says it all
 */
public record Advice(JarWord word, List<Reason> reasons) {
  public Advice {
    reasons = List.copyOf(reasons);
  }

  /** What the jar shows. */
  public static Advice of(Jar jar, OffsetDateTime now) {
    List<Reason> dangers = dangers(jar, now);
    List<Reason> all = new ArrayList<>(dangers);
    jar.doubt()
        .filter(d -> !d.condemns())
        .ifPresent(d -> add(all, new Reason.OfLot(d), jar.standing()));
    boolean safeSoFar = all.isEmpty();
    jar.outcome()
        .filter(o -> safeSoFar || o.verdict().grade() != Grade.SHELF)
        .map(Reason.CameOut::new)
        .filter(r -> !all.contains(r))
        .ifPresent(all::add);
    if (!jar.facts().madeHere() && !jar.origin().isUnsafe()) {
      all.add(new Reason.From(jar.origin()));
    }
    jar.background().withdrawn().ifPresent(all::add);
    return new Advice(word(jar, now), all);
  }

  /** The word alone. */
  public static JarWord word(Jar jar, OffsetDateTime now) {
    Standing standing = jar.standing();
    if (mayTurnUp(standing)) {
      if (jar.isCondemned() || isToThrowAway(jar, now)) {
        return JarWord.THROW_AWAY;
      }
      if (jar.doubt().isPresent()) {
        return JarWord.DO_NOT_EAT_YET;
      }
    }
    return byStanding(jar, now);
  }

  /** Whether it gets a label for the shelf: one still to be filled, or one there to be eaten. */
  public static boolean isLabelled(Jar jar, OffsetDateTime now) {
    JarWord word = word(jar, now);
    return switch (jar.standing().kind()) {
      case PLANNED, COOLING ->
          word == JarWord.PLANNED
              || word == JarWord.NOT_RECORDED
              || word == JarWord.COOLING
              || word == JarWord.TEST_SEAL;
      case ON_SHELF -> word.mayBeEaten();
      default -> false;
    };
  }

  /** By its verdict or because its time is over; having been lost makes no jar fit to eat. */
  private static boolean isToThrowAway(Jar jar, OffsetDateTime now) {
    Jar there = jar.standing() instanceof Standing.Missing lost ? jar.with(lost.before()) : jar;
    return there.inTime(now) instanceof Standing.ToThrowAway;
  }

  private static void add(List<Reason> reasons, Reason reason, Standing standing) {
    if (mayTurnUp(standing)) {
      reasons.add(reason);
    }
  }

  /** In the house, still to come, or gone and perhaps found again one day. */
  private static boolean mayTurnUp(Standing standing) {
    return switch (standing.kind()) {
      case PLANNED,
          COOLING,
          ON_SHELF,
          IN_REFRIGERATOR,
          IN_FREEZER,
          TO_RECAN,
          TO_THROW_AWAY,
          MISSING,
          TAKEN ->
          true;
      case UNFILLED, CANCELLED, TOSSED, RECANNED -> false;
    };
  }

  /** What keeps it from being eaten for good, the reason that decides first. */
  private static List<Reason> dangers(Jar jar, OffsetDateTime now) {
    List<Reason> dangers = new ArrayList<>();
    Standing standing = jar.standing();
    if (standing instanceof Standing.Tossed tossed) {
      dangers.add(new Reason.ThrownAway(tossed));
      jar.harm().ifPresent(dangers::add);
      return dangers;
    }
    if (!mayTurnUp(standing)) {
      return dangers;
    }
    jar.harm().ifPresent(dangers::add);
    jar.doubt().filter(Doubt::condemns).map(Reason.OfLot::new).ifPresent(dangers::add);
    if (jar.origin().isUnsafe()) {
      dangers.add(new Reason.From(jar.origin()));
    }
    if (isToThrowAway(jar, now)) {
      Standing last = standing instanceof Standing.Missing missing ? missing.before() : standing;
      if (!(last instanceof Standing.ToThrowAway)) {
        dangers.add(new Reason.Late(last));
      }
      jar.outcome()
          .filter(o -> o.verdict().grade() == Grade.THROW_AWAY)
          .map(Reason.CameOut::new)
          .ifPresent(dangers::add);
    }
    return dangers;
  }

  private static JarWord byStanding(Jar jar, OffsetDateTime now) {
    return switch (jar.standing().kind()) {
      case PLANNED -> planned(jar, now.toLocalDate());
      case UNFILLED -> JarWord.UNFILLED;
      case CANCELLED -> JarWord.CANCELLED;
      case COOLING ->
          now.isBefore(((Standing.Cooling) jar.standing()).lookFrom())
              ? JarWord.COOLING
              : JarWord.TEST_SEAL;
      case ON_SHELF -> onShelf(jar, now.toLocalDate());
      case IN_REFRIGERATOR -> JarWord.REFRIGERATOR;
      case IN_FREEZER -> JarWord.FREEZER;
      case TO_RECAN -> JarWord.RECAN;
      case TO_THROW_AWAY -> JarWord.THROW_AWAY;
      case MISSING -> JarWord.MISSING;
      case TAKEN -> JarWord.TAKEN;
      case TOSSED -> JarWord.TOSSED;
      case RECANNED -> JarWord.RECANNED;
    };
  }

  /** The day of packing has passed and nobody said what came of it: that is not a good jar. */
  private static JarWord planned(Jar jar, LocalDate today) {
    boolean past = jar.facts().packed().map(d -> d.isBefore(today)).orElse(true);
    return past ? JarWord.NOT_RECORDED : JarWord.PLANNED;
  }

  private static JarWord onShelf(Jar jar, LocalDate today) {
    if (jar.origin() instanceof Origin.Unvouched) {
      return JarWord.UNVOUCHED;
    }
    if (!jar.mayStandOnShelf()) {
      return JarWord.NOT_RECORDED;
    }
    Optional<LocalDate> useBy = jar.facts().useBy();
    if (useBy.isEmpty()) {
      return JarWord.UNDATED;
    }
    if (useBy.get().isBefore(today)) {
      return JarWord.OVERDUE;
    }
    if (jar.isUsedFirst()) {
      return JarWord.USE_FIRST;
    }
    boolean keeps = useBy.get().isAfter(YearMonth.from(today).plusMonths(1).atEndOfMonth());
    return keeps ? JarWord.KEEPS : JarWord.DUE_SOON;
  }
}
