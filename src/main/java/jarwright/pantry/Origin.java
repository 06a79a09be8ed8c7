package jarwright.pantry;

import jarwright.ask.Untested;
import java.util.Locale;

/** Where jars come from, and what that makes of them. */
public sealed interface Origin {
  /** Whether it is recorded only to be thrown away. */
  default boolean isUnsafe() {
    return false;
  }

  /** Planned with the program, so that its process is on record. */
  record MadeHere() implements Origin {}

  /** Food or a way of canning that has no tested process. */
  record Refused(Untested untested) implements Origin {
    @Override
    public boolean isUnsafe() {
      return true;
    }
  }

  /** Not known to be safe. */
  record Unsafe(Lack lack) implements Origin {
    @Override
    public boolean isUnsafe() {
      return true;
    }
  }

  /** Acid food that nobody vouches for yet. */
  record Unvouched() implements Origin {}

  /** Not made with the program, and vouched for. */
  record ByWord(Vouched vouched) implements Origin {}

  /** What is missing, or what the tables do not have. */
  enum Lack {
    /** Low-acid food, or food that the tables do not know, and nobody vouches for it. */
    NOBODYS_WORD,
    /** Somebody vouches for food that the tables do not know by that name, or not for sure. */
    FOOD_NOT_KNOWN,
    /** Low-acid food whose process was not told so that it can be compared with the tables. */
    PROCESS_NOT_TOLD,
    /** The tables have no process for the food in jars of this size. */
    JAR,
    /** The tables have no process for the food in this pack. */
    PACK,
    /** The tables have no process for the food by this method. */
    METHOD,
    /** The tables have no process for it at this altitude. */
    ALTITUDE,
    /** The time or the pressure was below the tested one. */
    TOO_SHORT,
    /** Every jar of it needs measured acid, and nobody says that it was put in. */
    ACID;

    /** As in {@code too-short}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
