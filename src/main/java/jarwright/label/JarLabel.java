package jarwright.label;

import jarwright.batch.Batch;
import jarwright.lot.JarId;
import jarwright.lot.UseBy;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
   * The label of a batch's jar for the shelf.
   *
   * @param number from 1
   * @param product its name in the language of {@code words}
   */
  public static JarLabel of(Batch batch, int number, String product, Wording words) {
    return new JarLabel(
        batch.lot().jar(number),
        product,
        Optional.of(batch.lot().packed()),
        batch.useBy(),
        facts(batch, words),
        coded(batch, product, words),
        batch.kitchen().link(),
        Optional.empty());
  }

  /** The labels of all jars made ready for a batch, in their order. */
  public static List<JarLabel> all(Batch batch, String product, Wording words) {
    JarLabel first = of(batch, 1, product, words);
    List<JarLabel> all = new ArrayList<>(batch.jars());
    for (int number = 1; number <= batch.jars(); number++) {
      all.add(first.of(number));
    }
    return all;
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

  private static List<String> facts(Batch batch, Wording words) {
    Style style = UnitWords.style(batch.kitchen().units(), words);
    List<String> facts = new ArrayList<>();
    facts.add(
        words.text(
            "label.pack",
            Map.of(
                "pack", words.text("pack." + batch.pack()),
                "jar", words.count("jar." + batch.jar(), 1))));
    facts.add(
        words.text(
            batch.process().isPressure() ? "label.process.pressure" : "label.process",
            process(batch, words, style)));
    facts.add(
        words.text("label.altitude", Map.of("altitude", batch.kitchen().altitude().text(style))));
    batch
        .acid()
        .ifPresent(
            a ->
                facts.add(
                    words.text(
                        "label.acid",
                        Map.of(
                            "dose", a.each().text(style, Rounding.UP),
                            "acid", words.text("acid." + a.kind().name())))));
    if (!batch.kitchen().household().isBlank()) {
      facts.add(batch.kitchen().household());
    }
    return facts;
  }

  private static Map<String, Object> process(Batch batch, Wording words, Style style) {
    int minutes = batch.process().minutes();
    return batch
        .process()
        .pressure()
        .<Map<String, Object>>map(p -> Map.of("n", minutes, "psi", p.text(style)))
        .orElseGet(() -> Map.of("n", minutes, "method", words.text("method." + batch.method())));
  }

  private static List<String> coded(Batch batch, String product, Wording words) {
    List<String> coded = new ArrayList<>();
    coded.add(product);
    coded.add(words.text("pack." + batch.pack()));
    coded.add(words.count("jar." + batch.jar(), 1));
    coded.add(words.text("method." + batch.method()));
    coded.add(words.text("label.minutes", Map.of("n", batch.process().minutes())));
    coded.add(batch.kitchen().altitude().toString());
    batch.acid().ifPresent(a -> coded.add(words.text("acid." + a.kind().name())));
    return coded;
  }
}
