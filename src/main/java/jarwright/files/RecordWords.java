package jarwright.files;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.LoadClock;
import jarwright.pantry.Ticked;
import jarwright.quantity.GaugePressure;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.zone.ZoneRules;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Understands the cells of tables that tell of jars, as people and spreadsheets write them. */
final class RecordWords {
  private static final Pattern TIME =
      Pattern.compile("(\\d{1,2})[:.](\\d{2})(?:[:.](\\d{2}))?(?:\\s*([ap])\\.?m\\.?)?");
  private static final Pattern DATED = Pattern.compile("(\\d{4}-\\d{2}-\\d{2})[ T]+(.*)");
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,]\\d+)?(?:E[+-]?\\d+)?");
  private static final Pattern PLAIN_PSI = Pattern.compile("\\d+(?:\\.\\d+)?");

  private static final int HALF_DAY = 12;

  private final Fields fields;

  RecordWords(Fields fields) {
    this.fields = fields;
  }

  /** Reads a cell; empty where nothing stands there or it cannot be read, which is told. */
  <T> Optional<T> read(String key, Function<String, T> reader, String remedy) {
    return fields
        .text(key)
        .flatMap(
            text -> {
              try {
                return Optional.of(reader.apply(restored(text)));
              } catch (IllegalArgumentException e) {
                fields.problem(key, e.getMessage(), remedy);
                return Optional.empty();
              }
            });
  }

  /** Free text as it was before {@link Cell} made it harmless for a spreadsheet. */
  Optional<String> text(String key) {
    return fields.text(key).map(RecordWords::restored);
  }

  /** A person may well write a backslash that stands for nothing. */
  private static String restored(String cell) {
    try {
      return Cell.in(cell);
    } catch (IllegalArgumentException e) {
      return cell;
    }
  }

  Optional<LotCode> lot(String key) {
    Optional<String> text = fields.text(key);
    // 260824E-5 is a power of ten to a spreadsheet.
    boolean number = text.filter(t -> NUMBER.matcher(t).matches()).isPresent();
    String remedy =
        number
            ? "a spreadsheet took the lot for a number: make the column text and type it again"
            : "copy it from the label, as 260824A-T";
    return read(key, LotCode::parse, remedy);
  }

  /** {@code 1-7, 9}, {@code none}, or one whole code such as {@code 260824A-T/03}. */
  Optional<JarNumbers> jars(String key) {
    return read(
        key,
        text ->
            text.contains("/") ? JarNumbers.of(JarId.parse(text).number()) : JarNumbers.parse(text),
        "write them like 1..7, 9 or none; a spreadsheet makes dates of 1-7");
  }

  /** The lot that a whole jar code in the cell names. */
  Optional<LotCode> lotOfJar(String key) {
    return fields
        .text(key)
        .filter(t -> t.contains("/"))
        .flatMap(t -> read(key, c -> JarId.parse(c).lot(), "copy it from the label"));
  }

  /** Blank where nothing stands there, or a question mark. */
  Ticked ticked(String key) {
    return read(key, Ticked::parse, "write yes, no, or ? if you are not sure").orElse(Ticked.BLANK);
  }

  /** A time of day, to the second; 8:30, 08:30, 20:30:00 and 8:30 PM. */
  Optional<LocalTime> time(String key) {
    return fields
        .text(key)
        .filter(t -> !t.equals("?"))
        .flatMap(t -> read(key, RecordWords::timeOfDay, "write it like 08:30 or 17:45"));
  }

  /** A day and a time of it, or a time alone. */
  record LocalMoment(Optional<LocalDate> day, LocalTime time) {}

  /** A time of day, with its date before it where that is not plain. */
  Optional<LocalMoment> localMoment(String key) {
    return read(key, RecordWords::readMoment, "write it like 2026-08-25 08:30, or 08:30");
  }

  private static LocalMoment readMoment(String text) {
    Matcher dated = DATED.matcher(text.strip());
    if (!dated.matches()) {
      return new LocalMoment(Optional.empty(), timeOfDay(text));
    }
    try {
      return new LocalMoment(
          Optional.of(LocalDate.parse(dated.group(1))), timeOfDay(dated.group(2)));
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(
          "there is no day " + dated.group(1) + " in the calendar", e);
    }
  }

  /**
   * The same as a moment; a time alone is the first such time from the given moment on.
   *
   * @param from empty where it is not known, which asks for the day
   */
  Optional<OffsetDateTime> moment(String key, Optional<OffsetDateTime> from, ZoneRules rules) {
    Optional<LocalMoment> local = localMoment(key);
    if (local.isEmpty()) {
      return Optional.empty();
    }
    LocalMoment said = local.get();
    if (said.day().isEmpty() && from.isEmpty()) {
      fields.problem(key, "the day is missing", "write it like 2026-08-25 08:30");
      return Optional.empty();
    }
    Optional<OffsetDateTime> moment =
        said.day().isPresent()
            ? LoadClock.last(said.day().get().atTime(said.time()), rules)
            : LoadClock.next(said.time(), from.get(), rules);
    if (moment.isEmpty()) {
      fields.problem(key, "no clock showed that time", "write what the clock showed");
    }
    return moment;
  }

  static LocalTime timeOfDay(String text) {
    Matcher time = TIME.matcher(text.strip().toLowerCase(Locale.ROOT));
    IllegalArgumentException none =
        new IllegalArgumentException("\"" + Fields.shown(text) + "\" is no time of day");
    if (!time.matches()) {
      throw none;
    }
    int hour = Integer.parseInt(time.group(1));
    if (time.group(4) != null) {
      if (hour < 1 || hour > HALF_DAY) {
        throw none;
      }
      hour = hour % HALF_DAY + (time.group(4).equals("p") ? HALF_DAY : 0);
    }
    int second = time.group(3) == null ? 0 : Integer.parseInt(time.group(3));
    try {
      return LocalTime.of(hour, Integer.parseInt(time.group(2)), second);
    } catch (DateTimeException e) {
      none.initCause(e);
      throw none;
    }
  }

  /** A pressure, or a question mark; a plain number is in psi, as the gauge of the tables. */
  Optional<GaugePressure> pressure(String key) {
    if (fields.said(key).equals("?")) {
      return Optional.empty();
    }
    return fields.amount(
        key,
        t -> GaugePressure.parse(PLAIN_PSI.matcher(t.strip()).matches() ? t + " psi" : t),
        "11 or 76 kPa");
  }
}
