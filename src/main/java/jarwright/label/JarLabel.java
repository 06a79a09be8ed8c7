package jarwright.label;

import jarwright.batch.BatchRecord;
import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import jarwright.lot.UseBy;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Origin;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What one jar's label says. A jar from elsewhere needs its name, number and use-by alone.
 *
 * @param product its name in the language of the print-out
 * @param packed empty where nobody knows the day
 * @param useBy the last day; of a jar in the refrigerator that day
 * @param facts of the process, one line each, in the order in which they may be left out: last
 *     first
 * @param coded the same for the QR code
 * @param link base address for the QR code; empty for plain words
 * @param coldDays days that a jar may stay in the refrigerator; empty for a jar of the shelf
 */
public record JarLabel(
    JarId jar,
    String product,
    Optional<LocalDate> packed,
    UseBy useBy,
    List<String> facts,
    List<String> coded,
    Optional<String> link,
    Optional<Integer> coldDays) {
  public JarLabel {
    facts = List.copyOf(facts);
    coded = List.copyOf(coded);
    if (product.isBlank()) {
      throw new IllegalArgumentException("a label names its product");
    }
    if (coldDays.isPresent() && coldDays.get() < 1) {
      throw new IllegalArgumentException("a jar stays cold for a day or more, not " + coldDays);
    }
  }

  /**
   * The label of a lot's first jar for the shelf, from its record as planned.
   *
   * @param product its name in the language of {@code words}
   * @param link base address for the QR code; empty for plain words
   */
  public static JarLabel of(
      BatchRecord record, String product, Units units, Optional<String> link, Wording words) {
    return new JarLabel(
        record.lot().jar(1),
        product,
        Optional.of(record.days().packed()),
        new UseBy(record.days().useBy()),
        facts(record, UnitWords.style(units, words), words),
        coded(record, product, words),
        link,
        Optional.empty());
  }

  /**
   * The label of the first jar of a lot from an old list, of which little is known: it says by
   * whose word it may be eaten.
   *
   * @throws IllegalArgumentException where nobody knows its use-by date
   */
  public static JarLabel of(
      LotCode lot,
      LotFacts facts,
      Origin origin,
      String product,
      Optional<String> link,
      Wording words) {
    UseBy useBy =
        facts
            .useBy()
            .map(UseBy::new)
            .orElseThrow(() -> new IllegalArgumentException("a label needs a use-by date"));
    String process =
        origin instanceof Origin.ByWord by
            ? words.text("says.by-word.short", Map.of("who", by.vouched().who()))
            : words.text("says.unvouched");
    return new JarLabel(
        lot.jar(1),
        product,
        facts.packed(),
        useBy,
        List.of(process),
        List.of(product, process),
        link,
        Optional.empty());
  }

  /** The labels of the lot's first jars, in their order. */
  public List<JarLabel> upTo(int jars) {
    return IntStream.rangeClosed(1, jars).mapToObj(this::of).toList();
  }

  /** The same label for another jar of the lot. */
  public JarLabel of(int number) {
    return new JarLabel(
        jar.lot().jar(number), product, packed, useBy, facts, coded, link, coldDays);
  }

  /**
   * The label of a jar that must not go to the shelf.
   *
   * @param days from now on
   * @param by the last day
   */
  public JarLabel cold(int days, LocalDate by) {
    return new JarLabel(jar, product, packed, new UseBy(by), facts, coded, link, Optional.of(days));
  }

  private static List<String> facts(BatchRecord record, Style style, Wording words) {
    List<String> facts = new ArrayList<>();
    BatchRecord.Processing processing = record.processing();
    facts.add(
        words.text(
            processing.tested().isPressure() ? "label.process.pressure" : "label.process",
            process(processing, words, style)));
    facts.add(
        words.text(
            "label.pack." + record.food().pack(),
            Map.of("jar", words.text("label.jar." + record.food().jar()))));
    facts.add(words.text("label.altitude", Map.of("altitude", processing.altitude().text(style))));
    record
        .additions()
        .acid()
        .ifPresent(
            a ->
                facts.add(
                    words.text(
                        "label.acid",
                        Map.of(
                            "dose", a.each().text(style, Rounding.UP),
                            "acid", words.text("acid." + a.kind().name())))));
    if (!record.household().isBlank()) {
      facts.add(record.household());
    }
    return facts;
  }

  private static Map<String, Object> process(
      BatchRecord.Processing processing, Wording words, Style style) {
    int minutes = processing.tested().minutes();
    return processing
        .tested()
        .pressure()
        .<Map<String, Object>>map(p -> Map.of("n", minutes, "psi", p.text(style)))
        .orElseGet(
            () -> Map.of("n", minutes, "method", words.text("method." + processing.method())));
  }

  private static List<String> coded(BatchRecord record, String product, Wording words) {
    List<String> coded = new ArrayList<>();
    coded.add(product);
    coded.add(words.text("pack." + record.food().pack()));
    coded.add(words.text("label.jar." + record.food().jar()));
    coded.add(words.text("method." + record.processing().method()));
    coded.add(words.text("label.minutes", Map.of("n", record.processing().tested().minutes())));
    coded.add(record.processing().altitude().toString());
    record.additions().acid().ifPresent(a -> coded.add(words.text("acid." + a.kind().name())));
    return coded;
  }
}
