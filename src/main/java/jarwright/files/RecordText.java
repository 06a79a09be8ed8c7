package jarwright.files;

import jarwright.batch.BatchRecord;
import jarwright.process.AltitudeBand;
import jarwright.process.Headspace;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes a batch record as YAML for people; the same record is always the same text. */
final class RecordText {
  private static final String HEAD =
      """
      # A batch as it was planned. jarwright wrote this file, and reads it back: do not edit it.
      # What was really done stands in ledger.csv. Follow the current tested guide, and ask your
      # local extension service or health authority where you are in doubt.
      """;

  private final StringBuilder out = new StringBuilder(HEAD);

  private RecordText() {}

  static String of(BatchRecord record) {
    RecordText text = new RecordText();
    text.write(record);
    return text.out.toString();
  }

  private void write(BatchRecord record) {
    add("lot", record.lot());
    quoted("plan", record.origin().plan());
    add("batch", record.origin().position());
    quoted("household", record.household());
    add("product", record.food().product());
    quoted("name", record.food().name());
    add("pack", record.food().pack());
    add("jar", record.food().jar());
    processing(record.processing());
    additions(record.additions());
    jars(record.jars());
    days(record.days());
    quoted("from", record.notes().from());
    quoted("shelf", record.notes().shelf());
    quoted("lids", record.notes().lids());
    quoted("note", record.notes().note());
  }

  private void processing(BatchRecord.Processing processing) {
    add("method", processing.method());
    add("minutes", processing.tested().minutes());
    add("pressure", processing.tested().pressure());
    add("altitude", processing.altitude());
    add("altitude-band", band(processing.band()));
    quoted("source", processing.source().place());
    add("time-printed-for", processing.printedFor());
    add("sterilise-jars-minutes", processing.sterilise());
  }

  private void additions(BatchRecord.Additions additions) {
    additions
        .acid()
        .ifPresent(
            acid -> {
              add("acid", acid.kind());
              add("acid-each-jar", acid.each());
            });
    add("salt-each-jar", additions.salt());
    add("syrup", additions.syrup());
    additions.formulaTimes().ifPresent(n -> add("formula-times", n));
    additions.headspace().forEach(this::headspace);
  }

  private void headspace(Headspace space) {
    add(headspaceKey(space.of()), space.depth());
  }

  static String headspaceKey(String of) {
    return of.isEmpty() ? "headspace" : "headspace-" + of;
  }

  private void jars(BatchRecord.Jars jars) {
    add("jars", jars.ready());
    add("jars-at-least", jars.expected().fewest());
    add("jars-likely", jars.expected().likely());
    add("jars-at-most", jars.expected().most());
    jars.produce()
        .ifPresent(
            weight -> {
              add("produce-at-best", weight.least());
              add("produce-at-worst", weight.most());
            });
    quoted("canner", jars.canner());
    add("loads", jars.loads());
  }

  private void days(BatchRecord.Days days) {
    add("packed", days.packed());
    days.start().ifPresent(t -> quoted("start", t.toString()));
    if (!days.times().isEmpty()) {
      List<String> times = days.times().stream().map(t -> '"' + t.toString() + '"').toList();
      add("load-starts", times);
    }
    add("use-by", days.useBy());
  }

  /** {@code 1001-3000 ft}, or {@code 6001 ft and above}. */
  static String band(AltitudeBand band) {
    return band.toFeet().isPresent()
        ? band.fromFeet() + "-" + band.toFeet().getAsInt() + " ft"
        : band.fromFeet() + " ft and above";
  }

  private void add(String key, Object value) {
    if (value instanceof Optional<?> maybe) {
      maybe.ifPresent(v -> add(key, v));
    } else {
      out.append(key).append(": ").append(value).append('\n');
    }
  }

  /** Free text, always in quotes; left out where empty. */
  private void quoted(String key, String text) {
    if (!text.isEmpty()) {
      String safe =
          text.codePoints()
              .mapToObj(c -> c == '"' || c == '\\' ? "\\" + (char) c : Character.toString(c))
              .collect(Collectors.joining());
      out.append(key).append(": \"").append(safe).append("\"\n");
    }
  }
}
