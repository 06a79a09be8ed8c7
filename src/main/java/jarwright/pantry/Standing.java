package jarwright.pantry;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.Optional;

/** Where a jar is, or where it went. A jar has exactly one. */
public sealed interface Standing {

  /** One word for each kind of standing. */
  enum Kind {
    PLANNED,
    UNFILLED,
    CANCELLED,
    COOLING,
    ON_SHELF,
    IN_REFRIGERATOR,
    IN_FREEZER,
    TO_RECAN,
    TO_THROW_AWAY,
    MISSING,
    TAKEN,
    TOSSED,
    RECANNED;

    /** As in {@code in-refrigerator}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** As in {@code in refrigerator}. */
    public String text() {
      return word().replace('-', ' ');
    }
  }

  Kind kind();

  /** When it left the house, was missed or was cancelled; empty for others. */
  default Optional<OffsetDateTime> since() {
    return Optional.empty();
  }

  /** Whether the jar, full, is still in the house as far as the ledger knows. */
  default boolean isHere() {
    return false;
  }

  /** Named by a plan; nothing has been recorded of it. */
  record Planned() implements Standing {
    @Override
    public Kind kind() {
      return Kind.PLANNED;
    }
  }

  /** Named by a plan and never filled. */
  record Unfilled() implements Standing {
    @Override
    public Kind kind() {
      return Kind.UNFILLED;
    }
  }

  /** Named by a plan whose lot was never made. */
  record Cancelled(OffsetDateTime when, String why) implements Standing {
    @Override
    public Kind kind() {
      return Kind.CANCELLED;
    }

    @Override
    public Optional<OffsetDateTime> since() {
      return Optional.of(when);
    }
  }

  /**
   * Out of the canner as it should be; its seal cannot be told yet, or nobody has told it.
   *
   * @param load counted from 1
   * @param lookFrom when its seal may be tested
   */
  record Cooling(int load, OffsetDateTime lookFrom) implements Standing {
    @Override
    public Kind kind() {
      return Kind.COOLING;
    }

    @Override
    public boolean isHere() {
      return true;
    }
  }

  /**
   * @param shelf empty where not said
   * @param useFirst to be eaten before others of its kind
   */
  record OnShelf(String shelf, boolean useFirst) implements Standing {
    @Override
    public Kind kind() {
      return Kind.ON_SHELF;
    }

    @Override
    public boolean isHere() {
      return true;
    }
  }

  /** Not for the shelf. */
  record InRefrigerator(LocalDate eatBy) implements Standing {
    @Override
    public Kind kind() {
      return Kind.IN_REFRIGERATOR;
    }

    @Override
    public boolean isHere() {
      return true;
    }
  }

  record InFreezer() implements Standing {
    @Override
    public Kind kind() {
      return Kind.IN_FREEZER;
    }

    @Override
    public boolean isHere() {
      return true;
    }
  }

  /** Waits to be canned again or frozen; from the given time on it is to be thrown away. */
  record ToRecan(OffsetDateTime by, Optional<LocalDate> eatBy) implements Standing {
    @Override
    public Kind kind() {
      return Kind.TO_RECAN;
    }

    @Override
    public boolean isHere() {
      return true;
    }
  }

  /** Found unsafe and not yet reported as thrown away. */
  record ToThrowAway() implements Standing {
    @Override
    public Kind kind() {
      return Kind.TO_THROW_AWAY;
    }

    @Override
    public boolean isHere() {
      return true;
    }
  }

  /**
   * Not found in a stock-take.
   *
   * @param before what it was
   */
  record Missing(Standing before, OffsetDateTime when) implements Standing {
    /** The jar as it was before it was missed. */
    public Jar found(Jar jar) {
      return jar.with(before);
    }

    @Override
    public Kind kind() {
      return Kind.MISSING;
    }

    @Override
    public Optional<OffsetDateTime> since() {
      return Optional.of(when);
    }
  }

  record Taken(OffsetDateTime when) implements Standing {
    @Override
    public Kind kind() {
      return Kind.TAKEN;
    }

    @Override
    public Optional<OffsetDateTime> since() {
      return Optional.of(when);
    }
  }

  record Tossed(OffsetDateTime when, String why) implements Standing {
    @Override
    public Kind kind() {
      return Kind.TOSSED;
    }

    @Override
    public Optional<OffsetDateTime> since() {
      return Optional.of(when);
    }
  }

  /** Its food went into jars of another lot. */
  record Recanned(OffsetDateTime when) implements Standing {
    @Override
    public Kind kind() {
      return Kind.RECANNED;
    }

    @Override
    public Optional<OffsetDateTime> since() {
      return Optional.of(when);
    }
  }
}
