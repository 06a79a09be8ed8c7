package jarwright.pantry;

import jarwright.lot.JarId;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A jar as the ledger knows it.
 *
 * @param standing where it is or went, whether or not it may be eaten
 * @param outcome empty before the canner and for jars from old lists
 * @param doubt present while another jar of the lot speaks against it
 * @param harm what was found of this jar itself
 */
public record Jar(
    JarId id,
    LotFacts facts,
    Background background,
    Standing standing,
    Optional<Outcome> outcome,
    Optional<Doubt> doubt,
    Optional<Reason.Harm> harm) {

  static Jar planned(JarId id, LotFacts facts) {
    return new Jar(
        id,
        facts,
        Background.PLAIN,
        new Standing.Planned(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  Jar with(Standing next) {
    return new Jar(id, facts, background, next, outcome, doubt, harm);
  }

  Jar with(Outcome next) {
    Standing after = next.verdict().standing(facts.shelf());
    return new Jar(id, facts, background, after, Optional.of(next), doubt, harm);
  }

  /** The same in another doubt; one that condemned it stays. */
  Jar with(Optional<Doubt> next) {
    boolean stays = doubt.filter(Doubt::condemns).isPresent();
    return stays ? this : new Jar(id, facts, background, standing, outcome, next, harm);
  }

  /** The same with what was found of it; what was seen goes before that it turned up. */
  Jar with(Reason.Harm found) {
    boolean stays = harm.isPresent() && found instanceof Reason.TurnedUp;
    return stays
        ? this
        : new Jar(id, facts, background, standing, outcome, doubt, Optional.of(found));
  }

  Jar with(Background next) {
    return new Jar(id, facts, next, standing, outcome, doubt, harm);
  }

  /** Where it comes from, by the tables. */
  public Origin origin() {
    return background.origin();
  }

  /** Whether the jar came out of a sound load sealed, or came from an old list. */
  public boolean mayStandOnShelf() {
    return outcome.map(Outcome::shelved).orElse(!facts.madeHere());
  }

  /** Whether it is to be eaten before others of its kind. */
  public boolean isUsedFirst() {
    return outcome.map(o -> o.verdict().grade() == Grade.USE_FIRST).orElse(false);
  }

  /** Whether nobody has recorded yet how it came out. */
  public boolean isOpen() {
    return standing instanceof Standing.Planned || standing instanceof Standing.Cooling;
  }

  /** The load it was in, counted from 1; empty where that is not recorded. */
  Optional<Integer> loaded() {
    if (standing instanceof Standing.Cooling cooling) {
      return Optional.of(cooling.load());
    }
    return outcome.map(Outcome::load);
  }

  /** Whether something was in it: planned jars that were never filled do not count. */
  public boolean wasPacked() {
    return switch (standing.kind()) {
      case PLANNED, UNFILLED, CANCELLED -> false;
      default -> true;
    };
  }

  /** Whether it is to be thrown away whatever comes, by what was found of it, its lot or origin. */
  public boolean isCondemned() {
    return harm.isPresent() || doubt.filter(Doubt::condemns).isPresent() || origin().isUnsafe();
  }

  /** The standing at a given time: what is condemned or late is to be thrown away. */
  public Standing standingAt(OffsetDateTime now) {
    return standing.isHere() && isCondemned() ? new Standing.ToThrowAway() : inTime(now);
  }

  /** The standing at a given time: what was left beyond its time is to be thrown away. */
  Standing inTime(OffsetDateTime now) {
    LocalDate today = now.toLocalDate();
    if (standing instanceof Standing.ToRecan recan && now.isAfter(recan.by())) {
      return new Standing.ToThrowAway();
    }
    if (standing instanceof Standing.InRefrigerator cold && today.isAfter(cold.eatBy())) {
      return new Standing.ToThrowAway();
    }
    return standing;
  }

  /** The day by which it is to be used, eaten or canned again; empty where there is none. */
  public Optional<LocalDate> deadline() {
    if (isCondemned()) {
      return Optional.empty();
    }
    if (standing instanceof Standing.InRefrigerator cold) {
      return Optional.of(cold.eatBy());
    }
    if (standing instanceof Standing.ToRecan recan) {
      return Optional.of(recan.by().toLocalDate());
    }
    return facts.useBy();
  }

  /**
   * The use-by date of the label while it is the one that counts; empty once the jar is to be eaten
   * sooner, canned again or thrown away.
   */
  public Optional<LocalDate> useBy() {
    if (isCondemned()) {
      return Optional.empty();
    }
    Standing last = standing instanceof Standing.Missing missing ? missing.before() : standing;
    return switch (last.kind()) {
      case IN_REFRIGERATOR, TO_RECAN, TO_THROW_AWAY, TOSSED, RECANNED, UNFILLED, CANCELLED ->
          Optional.empty();
      case PLANNED, COOLING, ON_SHELF, IN_FREEZER, MISSING, TAKEN -> facts.useBy();
    };
  }

  /**
   * The moment by which it is to be canned again, frozen or refrigerated, or from which its seal
   * may be tested; empty for others.
   */
  public Optional<OffsetDateTime> moment() {
    if (isCondemned()) {
      return Optional.empty();
    }
    if (standing instanceof Standing.Cooling cooling) {
      return Optional.of(cooling.lookFrom());
    }
    return standing instanceof Standing.ToRecan recan ? Optional.of(recan.by()) : Optional.empty();
  }

  /** The last day on which it may be eaten from the refrigerator; empty where it is not for it. */
  public Optional<LocalDate> eatBy(OffsetDateTime now) {
    Standing then = standingAt(now);
    if (then instanceof Standing.InRefrigerator cold) {
      return Optional.of(cold.eatBy());
    }
    return then instanceof Standing.ToRecan recan ? recan.eatBy() : Optional.empty();
  }

  /** The shelf it stands on; empty where that has no name or it stands on none. */
  public String shelf() {
    return standing instanceof Standing.OnShelf on ? on.shelf() : "";
  }
}
