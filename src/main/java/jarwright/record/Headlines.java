package jarwright.record;

import jarwright.page.Wording;
import jarwright.pantry.Advice;
import jarwright.pantry.Jar;
import jarwright.pantry.JarWord;
import jarwright.pantry.Origin;
import jarwright.pantry.Standing;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Words each jar's headline: what it shows, as decided by {@link Advice}. */
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
    JarWord word = Advice.word(jar, now);
    String key = key(word);
    Optional<String> date = date(jar, word);
    String large =
        date.map(d -> words.text(key + ".dated", Map.of("date", d)))
            .orElseGet(() -> words.text(key));
    boolean byWord = jar.origin() instanceof Origin.ByWord && word.mayBeEaten();
    Tone tone = byWord && tone(word) == Tone.GOOD ? Tone.PLAIN : tone(word);
    return new Headline(tone, large, detail(jar, word));
  }

  /** What a word is called where there is no room for more. */
  public static String plain(JarWord word, Wording words) {
    return words.text(key(word));
  }

  private static String key(JarWord word) {
    return "says." + word.word();
  }

  private static Tone tone(JarWord word) {
    return switch (word) {
      case THROW_AWAY, DO_NOT_EAT_YET, TOSSED -> Tone.STOP;
      case RECAN, REFRIGERATOR, TEST_SEAL -> Tone.COLD;
      case COOLING, NOT_RECORDED, UNVOUCHED, UNDATED, MISSING, CANCELLED -> Tone.LOOK;
      case OVERDUE, USE_FIRST -> Tone.FIRST;
      case DUE_SOON, KEEPS, FREEZER -> Tone.GOOD;
      case PLANNED, TAKEN, RECANNED, UNFILLED -> Tone.PLAIN;
    };
  }

  /** The date or moment that belongs to the word; empty where none does. */
  private Optional<String> date(Jar jar, JarWord word) {
    return switch (word) {
      case OVERDUE, USE_FIRST, DUE_SOON, KEEPS -> jar.useBy().map(this::date);
      case RECAN, COOLING -> jar.moment().map(this::time);
      case REFRIGERATOR -> jar.eatBy(now).map(this::date);
      case MISSING, TAKEN, TOSSED, RECANNED, CANCELLED ->
          jar.standing().since().map(OffsetDateTime::toLocalDate).map(this::date);
      case THROW_AWAY,
          DO_NOT_EAT_YET,
          TEST_SEAL,
          NOT_RECORDED,
          UNVOUCHED,
          UNDATED,
          FREEZER,
          PLANNED,
          UNFILLED ->
          Optional.empty();
    };
  }

  private String detail(Jar jar, JarWord word) {
    if (word.mayBeEaten() && jar.origin() instanceof Origin.ByWord by) {
      Map<String, String> told = Map.of("who", by.vouched().who(), "source", by.vouched().source());
      return words.text("says.by-word.detail", told);
    }
    String plain = words.text(key(word) + ".detail");
    boolean gone = word == JarWord.THROW_AWAY || word == JarWord.DO_NOT_EAT_YET;
    Standing standing = jar.standing();
    if (gone && (standing instanceof Standing.Taken || standing instanceof Standing.Missing)) {
      String date = date(standing.since().orElseThrow().toLocalDate());
      String where = "says.throw-away." + standing.kind().word();
      return words.text(where, Map.of("date", date)) + " " + plain;
    }
    return plain;
  }

  private String date(LocalDate date) {
    return words.date("long", date);
  }

  private String time(OffsetDateTime time) {
    return words.text(
        "record.moment", Map.of("date", date(time.toLocalDate()), "time", CLOCK.format(time)));
  }
}
