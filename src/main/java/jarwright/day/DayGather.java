package jarwright.day;

import jarwright.batch.AcidPerJar;
import jarwright.batch.Batch;
import jarwright.batch.FormulaMultiple;
import jarwright.batch.ProduceRange;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.process.JarSize;
import jarwright.process.Product;
import jarwright.quantity.Fraction;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Volume;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** What to have in the house before the day starts. */
final class DayGather {
  private final List<Batch> batches;
  private final Wording words;
  private final Function<Product, String> productName;
  private final UnaryOperator<String> ingredient;
  private final Style style;
  private final List<Map<String, Object>> lines = new ArrayList<>();

  DayGather(
      List<Batch> batches,
      Wording words,
      Function<Product, String> productName,
      UnaryOperator<String> ingredient) {
    this.batches = batches;
    this.words = words;
    this.productName = productName;
    this.ingredient = ingredient;
    this.style = UnitWords.style(batches.get(0).kitchen().units(), words);
  }

  /** Lines of what, amount and what for, produce first. */
  List<Map<String, Object>> lines() {
    batches.forEach(this::produce);
    batches.forEach(b -> b.formula().ifPresent(f -> formula(b, f)));
    acids();
    sum("salt", b -> b.salt().map(s -> s.times(Fraction.of(b.jars()))), Rounding.UP);
    sum("sugar", b -> b.syrup().map(s -> s.sugar()), Rounding.UP);
    jars();
    return lines;
  }

  /** The weight that the plan gives is there; else what so many jars take. */
  private void produce(Batch batch) {
    Optional<String> amount =
        batch
            .plan()
            .amount()
            .fold(
                jars -> batch.produce().map(this::amount),
                mass -> Optional.of(mass.text(style, Rounding.NEAREST)));
    amount.ifPresent(a -> add(productName.apply(batch.product()), a, batch.plan().notes().from()));
  }

  private String amount(ProduceRange range) {
    return words.text(
        "day.gather.produce",
        Map.of(
            "about", range.about().text(style, Rounding.UP),
            "most", range.most().text(style, Rounding.UP)));
  }

  private void formula(Batch batch, FormulaMultiple formula) {
    formula
        .lines()
        .forEach(
            l ->
                add(
                    ingredient.apply(l.ingredient()),
                    new FormulaAmount(words, batch.kitchen().units()).of(l).toString(),
                    productName.apply(batch.product())));
  }

  private void acids() {
    Map<String, Volume> totals = new TreeMap<>();
    for (Batch batch : batches) {
      Optional<AcidPerJar> acid = batch.acid();
      acid.ifPresent(
          a -> totals.merge(words.text("acid." + a.kind().name()), a.total(), Volume::plus));
    }
    totals.forEach((kind, total) -> add(kind, total.text(style, Rounding.UP), ""));
  }

  private void sum(String key, Function<Batch, Optional<Volume>> of, Rounding rounding) {
    batches.stream()
        .map(of)
        .flatMap(Optional::stream)
        .reduce(Volume::plus)
        .ifPresent(v -> add(words.text("day.gather." + key), v.text(style, rounding), ""));
  }

  private void jars() {
    Map<JarSize, Integer> sizes = new EnumMap<>(JarSize.class);
    batches.forEach(b -> sizes.merge(b.jar(), b.jars(), Integer::sum));
    sizes.forEach(
        (size, n) ->
            add(words.text("day.gather.jars"), n + " " + words.count("jar." + size, n), ""));
    int lids = batches.stream().mapToInt(Batch::lids).sum();
    add(words.text("day.gather.lids"), String.valueOf(lids), "");
  }

  private void add(String what, String amount, String note) {
    Map<String, Object> line = new LinkedHashMap<>();
    line.put("what", what);
    line.put("amount", amount);
    line.put("note", note);
    lines.add(line);
  }
}
