package jarwright.record;

import jarwright.page.Wording;
import jarwright.pantry.Doubt;
import jarwright.pantry.Jar;
import jarwright.pantry.Standing;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Words each jar's headline. Fails closed: only a sound jar in its time is called good. */
public final class Headlines {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final Wording words;
  private final OffsetDateTime now;

  /**
   * @param now the jars are looked at as of this time
   */
  public Headlines(Wording words, OffsetDateTime now) {
    this.words = words;
    this.now = now;
  }

  /** The headline of a jar. */
  public Headline of(Jar jar) {
    Standing standing = jar.standingAt(now);
    if (standing instanceof Standing.ToThrowAway) {
      return told(Tone.STOP, "stop", Map.of(), Map.of());
    }
    if (jar.doubt().isPresent() && standing.isHere()) {
      Doubt doubt = jar.doubt().get();
      return told(Tone.STOP, "doubt", Map.of(), Map.of("jar", doubt.cause().toString()));
    }
    return switch (standing.kind()) {
      case PLANNED -> planned(jar);
      case UNFILLED -> told(Tone.PLAIN, "unfilled", Map.of(), Map.of());
      case COOLING -> cooling((Standing.Cooling) standing);
      case ON_SHELF -> onShelf(jar);
      case IN_REFRIGERATOR ->
          dated(Tone.COLD, "cold", date(((Standing.InRefrigerator) standing).eatBy()));
      case IN_FREEZER -> told(Tone.GOOD, "freezer", Map.of(), Map.of());
      case TO_RECAN -> dated(Tone.COLD, "recan", time(((Standing.ToRecan) standing).by()));
      case TO_THROW_AWAY -> told(Tone.STOP, "stop", Map.of(), Map.of());
      case MISSING -> missing(jar, (Standing.Missing) standing);
      case TAKEN -> dated(Tone.PLAIN, "taken", day(((Standing.Taken) standing).when()));
      case TOSSED ->
          told(
              Tone.STOP,
              "stop",
              "tossed-detail",
              Map.of(),
              Map.of("date", day(((Standing.Tossed) standing).when())));
      case RECANNED -> dated(Tone.PLAIN, "recanned", day(((Standing.Recanned) standing).when()));
    };
  }

  /** Having been lost makes no jar fit to eat. */
  private Headline missing(Jar jar, Standing.Missing missing) {
    Headline before =
        of(new Jar(jar.id(), jar.facts(), missing.before(), jar.outcome(), jar.doubt()));
    return before.tone() == Tone.STOP ? before : dated(Tone.LOOK, "missing", day(missing.since()));
  }

  /** The day of packing has passed and nobody said what came of it: that is not a good jar. */
  private Headline planned(Jar jar) {
    boolean past = jar.facts().packed().map(d -> d.isBefore(now.toLocalDate())).orElse(true);
    return past
        ? told(Tone.LOOK, "unrecorded", Map.of(), Map.of())
        : told(Tone.PLAIN, "planned", Map.of(), Map.of());
  }

  /** Nothing is said of its seal before it has cooled, and then it is asked for. */
  private Headline cooling(Standing.Cooling cooling) {
    return now.isBefore(cooling.lookFrom())
        ? dated(Tone.LOOK, "cooling", time(cooling.lookFrom()))
        : told(Tone.COLD, "test-seal", Map.of(), Map.of());
  }

  private Headline onShelf(Jar jar) {
    Optional<LocalDate> useBy = jar.facts().useBy();
    if (!jar.facts().madeHere()) {
      return told(Tone.LOOK, "unvouched", Map.of(), Map.of());
    }
    if (!jar.mayStandOnShelf()) {
      return told(Tone.LOOK, "unrecorded", Map.of(), Map.of());
    }
    if (useBy.isEmpty()) {
      return told(Tone.LOOK, "undated", Map.of(), Map.of());
    }
    Map<String, String> date = Map.of("date", date(useBy.get()));
    if (useBy.get().isBefore(now.toLocalDate())) {
      return told(Tone.FIRST, "first", "past-detail", Map.of(), date);
    }
    if (jar.isUsedFirst()) {
      return told(Tone.FIRST, "first", "first-detail", Map.of(), date);
    }
    return told(Tone.GOOD, "good", date, Map.of());
  }

  private Headline dated(Tone tone, String key, String date) {
    return told(tone, key, Map.of("date", date), Map.of());
  }

  private Headline told(Tone tone, String key, Map<String, String> big, Map<String, String> small) {
    return told(tone, key, key + "-detail", big, small);
  }

  private Headline told(
      Tone tone, String key, String detail, Map<String, String> big, Map<String, String> small) {
    return new Headline(
        tone, words.text("record.words." + key, big), words.text("record.words." + detail, small));
  }

  private String date(LocalDate date) {
    return words.date("long", date);
  }

  private String day(OffsetDateTime time) {
    return date(time.toLocalDate());
  }

  private String time(OffsetDateTime time) {
    return words.text("record.moment", Map.of("date", day(time), "time", CLOCK.format(time)));
  }
}
