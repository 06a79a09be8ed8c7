package jarwright.pantry;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Something that happens to each of the named jars alike.
 *
 * @param word what the deed asks for: the shelf, the reason, the day; may be empty
 */
public record JarStep(Deed deed, String word) implements Happening, JarReport {
  public JarStep {
    if (deed == Deed.REFRIGERATED) {
      checkDay(word);
    }
  }

  private static void checkDay(String word) {
    try {
      LocalDate.parse(word);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException("\"" + Shown.of(word) + "\" is no date", e);
    }
  }

  /** A planned jar was never filled. */
  public static JarStep unfilled() {
    return new JarStep(Deed.UNFILLED, "");
  }

  public static JarStep moved(String shelf) {
    return new JarStep(Deed.MOVED, shelf);
  }

  /** Taken to be eaten or given away. */
  public static JarStep taken(String note) {
    return new JarStep(Deed.TAKEN, note);
  }

  /** Thrown away. */
  public static JarStep tossed(String why) {
    return new JarStep(Deed.TOSSED, why);
  }

  public static JarStep refrigerated(LocalDate eatBy) {
    return new JarStep(Deed.REFRIGERATED, eatBy.toString());
  }

  public static JarStep frozen() {
    return new JarStep(Deed.FROZEN, "");
  }

  /** The food went into jars of another lot. */
  public static JarStep recanned(String lot) {
    return new JarStep(Deed.RECANNED, lot);
  }

  /** Not found in a stock-take. */
  public static JarStep missing() {
    return new JarStep(Deed.MISSING, "");
  }

  /** Found in a stock-take though the ledger had it gone. */
  public static JarStep found(String shelf) {
    return new JarStep(Deed.FOUND, shelf);
  }

  /**
   * Why it must not be done to this jar at that time, as in {@code is taken}; empty if it may. What
   * is only to be thrown away can only be thrown away, and what is in doubt stays where it is until
   * it has been looked over.
   */
  @Override
  public Optional<String> hindrance(Jar jar, OffsetDateTime when) {
    Optional<String> conflict = conflict(jar, jar.standingAt(when), when);
    if (conflict.isPresent()) {
      return conflict;
    }
    boolean eatenOrKept =
        switch (deed) {
          case TAKEN, REFRIGERATED, FROZEN, RECANNED -> true;
          default -> false;
        };
    if (eatenOrKept && jar.doubt().isPresent()) {
      return Optional.of("is in doubt");
    }
    Jar there = jar.standing() instanceof Standing.Missing lost ? jar.with(lost.before()) : jar;
    if (deed == Deed.TAKEN && !Advice.word(there, when).mayBeEaten()) {
      return Optional.of("is not to be eaten");
    }
    return Optional.empty();
  }

  /**
   * Why it cannot have happened to this jar, wherever the ledger has it; empty if it can. What was
   * eaten against all advice was eaten.
   */
  Optional<String> conflict(Jar jar, OffsetDateTime when) {
    return conflict(jar, jar.inTime(when), when);
  }

  private Optional<String> conflict(Jar jar, Standing now, OffsetDateTime when) {
    boolean cools = now.kind() == Standing.Kind.COOLING;
    if (deed == Deed.UNFILLED && cools && jar.harm().isPresent()) {
      return Optional.of("was found spoiled, so it held food");
    }
    boolean possible = deed.isPossibleFor(now.kind());
    if (deed == Deed.TAKEN && jar.standing() instanceof Standing.Missing missing) {
      // Eaten after all; but a lost jar does not become fit to eat by having been lost.
      possible = deed.isPossibleFor(jar.with(missing.before()).inTime(when).kind());
    }
    return possible ? Optional.empty() : Optional.of("is " + now.kind().text());
  }

  Jar after(Jar jar, OffsetDateTime when) {
    return switch (deed) {
      case UNFILLED -> jar.with(new Standing.Unfilled());
      case MOVED -> jar.with(new Standing.OnShelf(word, jar.isUsedFirst()));
      case TAKEN -> jar.with(new Standing.Taken(when));
      case TOSSED -> jar.with(new Standing.Tossed(when, word));
      case REFRIGERATED -> jar.with(new Standing.InRefrigerator(LocalDate.parse(word)));
      case FROZEN -> jar.with(new Standing.InFreezer());
      case RECANNED -> jar.with(new Standing.Recanned(when));
      case MISSING -> jar.with(new Standing.Missing(jar.standing(), when));
      case FOUND -> foundAgain(jar, when);
      // A look told in a sentence lifts nothing; Checked does, sign by sign.
      case LOOKED_AT -> jar;
    };
  }

  /**
   * What was missing is again what it was. What had been thrown away, or was never fit for a shelf,
   * is not trusted.
   */
  private Jar foundAgain(Jar jar, OffsetDateTime when) {
    Standing onShelf = new Standing.OnShelf(word, jar.isUsedFirst());
    if (jar.standing() instanceof Standing.Missing missing) {
      return jar.with(missing.before() instanceof Standing.OnShelf ? onShelf : missing.before());
    }
    boolean trusted = jar.standing() instanceof Standing.Taken && jar.mayStandOnShelf();
    return trusted
        ? jar.with(onShelf)
        : jar.with(new Standing.ToThrowAway()).with(new Reason.TurnedUp(when));
  }

  @Override
  public List<Happening> happenings(Jar jar) {
    return List.of(this);
  }

  @Override
  public String kind() {
    return deed.kind();
  }

  @Override
  public Detail detail() {
    return deed.key().isEmpty() ? Detail.NONE : Detail.of(deed.key(), word);
  }

  static Map<String, Function<Detail, Happening>> readers() {
    Map<String, Function<Detail, Happening>> readers = new LinkedHashMap<>();
    for (Deed deed : Deed.values()) {
      readers.put(deed.kind(), d -> new JarStep(deed, d.text(deed.key())));
    }
    return readers;
  }
}
