package jarwright.files;

import jarwright.batch.BatchRecord;
import jarwright.batch.JarRange;
import jarwright.lot.LotCode;
import jarwright.plan.Amount;
import jarwright.plan.BatchPlan;
import jarwright.problem.Problem;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.AcidKind;
import jarwright.process.AltitudeBand;
import jarwright.process.Headspace;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.Source;
import jarwright.process.Syrup;
import jarwright.process.TestedProcess;
import jarwright.quantity.Altitude;
import jarwright.quantity.Fraction;
import jarwright.quantity.GaugePressure;
import jarwright.quantity.Length;
import jarwright.quantity.Mass;
import jarwright.quantity.Volume;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a batch record back, strictly: nobody but the program writes one. */
final class RecordReader {
  private static final List<String> HEADSPACES =
      List.of("", "solids", "liquid", "small-beans", "large-beans");
  private static final List<String> KEYS = keys();
  private static final Pattern BAND = Pattern.compile("(\\d{1,5})(?:-(\\d{1,5}) ft| ft and above)");
  private static final String RESTORE =
      "restore the file from a copy, or delete it if nothing was recorded for the lot";
  private static final int MOST_MINUTES = 1_000;

  private final Fields fields;

  private RecordReader(Fields fields) {
    this.fields = fields;
  }

  private static List<String> keys() {
    List<String> keys =
        new ArrayList<>(
            List.of(
                "lot plan batch household product name pack jar method minutes pressure altitude"
                    .split(" ")));
    keys.addAll(
        List.of(
            ("altitude-band source time-printed-for sterilise-jars-minutes acid acid-each-jar"
                    + " salt-each-jar syrup formula-times jars jars-at-least jars-likely"
                    + " jars-at-most produce-at-best produce-at-worst canner loads packed start"
                    + " load-starts use-by from shelf lids note")
                .split(" ")));
    HEADSPACES.forEach(of -> keys.add(RecordText.headspaceKey(of)));
    return List.copyOf(keys);
  }

  /**
   * Reads a record.
   *
   * @param lot by the file's name
   * @throws Refused where the file is not as the program wrote it
   */
  static BatchRecord read(TextFile file, LotCode lot) throws Refused {
    Problems problems = new Problems();
    Written written = YamlTree.read(file, problems);
    if (!(written instanceof Written.Keys keys)) {
      throw new Refused(written.place(), "this is no batch record", RESTORE);
    }
    Fields fields = new Fields(keys, "a batch record", KEYS, Map.of(), problems);
    try {
      BatchRecord record = new RecordReader(fields).record();
      if (!record.lot().equals(lot)) {
        fields.problem("lot", "is " + record.lot() + ", in the file of " + lot, "");
      }
      if (problems.isEmpty()) {
        return record;
      }
    } catch (IllegalArgumentException | NoSuchElementException e) {
      fields.damaged(e.getMessage());
    }
    throw new Refused(
        problems.list().stream()
            .map(p -> new Problem(p.where(), "the batch record is damaged: " + p.what(), RESTORE))
            .toList());
  }

  private BatchRecord record() {
    return new BatchRecord(
        need("lot", fields.parsed("lot", LotCode::parse)),
        new BatchRecord.Origin(need("plan", fields.text("plan")), count("batch", 1)),
        text("household"),
        food(),
        processing(),
        additions(),
        jars(),
        days(),
        new BatchPlan.Notes(text("from"), text("shelf"), text("lids"), text("note")));
  }

  private BatchRecord.Food food() {
    return new BatchRecord.Food(
        need("product", fields.text("product")),
        need("name", fields.text("name")),
        need("pack", fields.word("pack", Pack::named, Pack.choices())),
        need("jar", fields.word("jar", JarSize::named, JarSize.ids())));
  }

  private BatchRecord.Processing processing() {
    int minutes = count("minutes", 1);
    return new BatchRecord.Processing(
        need("method", fields.word("method", Method::named, Method.ids())),
        new TestedProcess(minutes, fields.parsed("pressure", GaugePressure::parse)),
        need("altitude", fields.parsed("altitude", Altitude::parse)),
        need("altitude-band", fields.parsed("altitude-band", RecordReader::band)),
        new Source(need("source", fields.text("source"))),
        fields.word("time-printed-for", JarSize::named, JarSize.ids()),
        maybe("sterilise-jars-minutes"));
  }

  private BatchRecord.Additions additions() {
    List<Headspace> headspace = new ArrayList<>();
    for (String of : HEADSPACES) {
      fields
          .parsed(RecordText.headspaceKey(of), Length::parse)
          .ifPresent(depth -> headspace.add(new Headspace(of, depth)));
    }
    Optional<BatchRecord.Acid> acid =
        fields
            .word("acid", AcidKind::named, AcidKind.ids())
            .map(
                kind ->
                    new BatchRecord.Acid(
                        kind,
                        need("acid-each-jar", fields.parsed("acid-each-jar", Volume::parse))));
    return new BatchRecord.Additions(
        acid,
        fields.parsed("salt-each-jar", Volume::parse),
        fields.word("syrup", Syrup::named, Syrup.ids()),
        fields.parsed("formula-times", Fraction::parse),
        headspace);
  }

  private BatchRecord.Jars jars() {
    Optional<BatchRecord.Weight> produce =
        fields
            .parsed("produce-at-best", Mass::parse)
            .map(
                least ->
                    new BatchRecord.Weight(
                        least,
                        need("produce-at-worst", fields.parsed("produce-at-worst", Mass::parse))));
    return new BatchRecord.Jars(
        count("jars", 1),
        new JarRange(count("jars-at-least", 0), count("jars-likely", 0), count("jars-at-most", 1)),
        produce,
        need("canner", fields.text("canner")),
        fields.list("loads", Integer::valueOf, "7"));
  }

  private BatchRecord.Days days() {
    return new BatchRecord.Days(
        need("packed", ClockWord.date(fields, "packed")),
        ClockWord.time(fields, "start"),
        fields.list("load-starts", RecordReader::time, "08:30"),
        need("use-by", ClockWord.date(fields, "use-by")));
  }

  private static AltitudeBand band(String text) {
    Matcher band = BAND.matcher(text);
    if (!band.matches()) {
      throw new IllegalArgumentException("\"" + text + "\" is no band of altitude");
    }
    return new AltitudeBand(
        Integer.parseInt(band.group(1)),
        band.group(2) == null
            ? OptionalInt.empty()
            : OptionalInt.of(Integer.parseInt(band.group(2))));
  }

  private static LocalTime time(String text) {
    try {
      return LocalTime.parse(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException("\"" + text + "\" is no time", e);
    }
  }

  private String text(String key) {
    return fields.text(key).orElse("");
  }

  private int count(String key, int least) {
    return need(key, present(fields.count(key, least, Math.max(MOST_MINUTES, Amount.MOST_JARS))));
  }

  private Optional<Integer> maybe(String key) {
    return present(fields.count(key, 1, Math.max(MOST_MINUTES, Amount.MOST_JARS)));
  }

  private static Optional<Integer> present(OptionalInt number) {
    return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
  }

  /** Ends the reading where a key is missing; one that was misread has been told already. */
  private <T> T need(String key, Optional<T> value) {
    return value.orElseThrow(() -> new NoSuchElementException(key + ": is missing or not right"));
  }
}
