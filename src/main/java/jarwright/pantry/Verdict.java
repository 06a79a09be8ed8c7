package jarwright.pantry;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;

/** What is to be done with a jar after it has cooled. */
public sealed interface Verdict {

  Grade grade();

  /** How the ledger notes it. */
  default Detail into(Detail detail) {
    return detail.with("verdict", grade().word());
  }

  /** Where the jar stands once the verdict has been followed as far as it says. */
  Standing standing(String shelf);

  /** Sound: onto the shelf. */
  record Shelf() implements Verdict {
    @Override
    public Grade grade() {
      return Grade.SHELF;
    }

    @Override
    public Standing standing(String shelf) {
      return new Standing.OnShelf(shelf, false);
    }
  }

  /** Sound, but will not keep its quality: onto the shelf, eaten before the others. */
  record UseFirst() implements Verdict {
    @Override
    public Grade grade() {
      return Grade.USE_FIRST;
    }

    @Override
    public Standing standing(String shelf) {
      return new Standing.OnShelf(shelf, true);
    }
  }

  /** Into the refrigerator at once. */
  record Refrigerate(LocalDate eatBy) implements Verdict {
    @Override
    public Grade grade() {
      return Grade.REFRIGERATE;
    }

    @Override
    public Detail into(Detail detail) {
      return Verdict.super.into(detail).with("eat-by", eatBy);
    }

    @Override
    public Standing standing(String shelf) {
      return new Standing.InRefrigerator(eatBy);
    }
  }

  /** It was frozen before it was too late, and stays frozen. */
  record Freezer() implements Verdict {
    @Override
    public Grade grade() {
      return Grade.FREEZER;
    }

    @Override
    public Standing standing(String shelf) {
      return new Standing.InFreezer();
    }
  }

  /**
   * Canned again by the full process with a new lid, or frozen, before a certain time; after it the
   * jar is thrown away.
   *
   * @param eatBy if it is refrigerated before that time instead; empty where no source allows it
   */
  record Recan(OffsetDateTime by, Optional<LocalDate> eatBy) implements Verdict {
    @Override
    public Grade grade() {
      return Grade.RECAN;
    }

    @Override
    public Detail into(Detail detail) {
      return Verdict.super.into(detail).with("recan-by", by).with("eat-by", eatBy);
    }

    @Override
    public Standing standing(String shelf) {
      return new Standing.ToRecan(by, eatBy);
    }
  }

  /** Thrown away safely, untasted. */
  record ThrowAway() implements Verdict {
    @Override
    public Grade grade() {
      return Grade.THROW_AWAY;
    }

    @Override
    public Standing standing(String shelf) {
      return new Standing.ToThrowAway();
    }
  }

  /** Reads what {@link #into} notes. */
  static Verdict from(Detail detail) {
    return switch (detail.need("verdict", Grade::parse)) {
      case SHELF -> new Shelf();
      case USE_FIRST -> new UseFirst();
      case REFRIGERATE -> new Refrigerate(detail.need("eat-by", LocalDate::parse));
      case FREEZER -> new Freezer();
      case RECAN ->
          new Recan(
              detail.need("recan-by", OffsetDateTime::parse),
              detail.maybe("eat-by", LocalDate::parse));
      case THROW_AWAY -> new ThrowAway();
    };
  }
}
