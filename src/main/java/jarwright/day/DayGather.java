package jarwright.day;

import jarwright.batch.Amounts;
import jarwright.batch.Batch;
import jarwright.batch.Shopping;
import jarwright.batch.ShoppingLine;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.process.Aisle;
import jarwright.process.Buying;
import jarwright.process.JarSize;
import jarwright.process.Product;
import jarwright.quantity.Fraction;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import jarwright.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** What to have in the house before the day starts, in words: each thing once. */
final class DayGather {
  private static final Fraction PINT = Volume.parse("1 pint").inMillilitres();
  private static final int LONG_KINDS = 28;
  private static final String VINEGAR = "vinegar";
  private static final Fraction HALF = Fraction.of(1, 2);
  private static final Fraction QUARTER = Fraction.of(1, 4);
  private static final Fraction HALF_LITRE = Fraction.of(500);

  private final List<Batch> batches;
  private final List<ShoppingLine> shopping;
  private final Wording words;
  private final Function<Product, String> productName;
  private final UnaryOperator<String> ingredient;
  private final Units units;
  private final Style style;

  /**
   * @param productName the name of a product in the sheet's language
   * @param ingredient the sheet's words for an English ingredient
   */
  DayGather(
      List<Batch> batches,
      Buying buying,
      Wording words,
      Function<Product, String> productName,
      UnaryOperator<String> ingredient) {
    this.batches = batches;
    this.shopping = Shopping.of(batches, buying);
    this.words = words;
    this.productName = productName;
    this.ingredient = ingredient;
    this.units = batches.get(0).kitchen().units();
    this.style = UnitWords.style(units, words);
  }

  /** One line. */
  record Item(String what, String amount, String note) {
    Map<String, Object> view() {
      return Map.of("what", what, "amount", amount, "note", note);
    }
  }

  /** The lines, produce first, jars and lids last. */
  List<Item> items() {
    List<Item> items = new ArrayList<>();
    for (ShoppingLine line : shopping) {
      items.add(new Item(ingredient.apply(line.what()), amount(line), note(line)));
    }
    Map<JarSize, Integer> jars = Shopping.jars(batches);
    jars.forEach(
        (size, n) ->
            items.add(
                new Item(
                    words.text("day.gather.jars"), words.number(n) + " " + name(size, n), "")));
    jars.forEach(
        (size, n) ->
            items.add(
                new Item(
                    words.text("day.gather.lids"),
                    words.text(
                        "day.gather.lids-for", Map.of("n", words.number(n), "jars", name(size, n))),
                    "")));
    return items;
  }

  private String name(JarSize size, int n) {
    return words.count("jar." + size, n);
  }

  private String amount(ShoppingLine line) {
    Amounts amounts = line.amounts();
    List<String> parts = new ArrayList<>();
    amounts.weight().ifPresent(w -> parts.add(weight(w)));
    amounts
        .volume()
        .ifPresent(
            v ->
                parts.add(
                    line.aisle() == Aisle.ACID && line.what().contains(VINEGAR)
                        ? bottles(v)
                        : (line.aisle() == Aisle.ACID ? v : inCups(v)).text(style, Rounding.UP)));
    new TreeMap<>(amounts.pieces()).forEach((unit, n) -> parts.add(pieces(n, unit)));
    amounts
        .eachGallon()
        .ifPresent(
            v ->
                parts.add(
                    words.text(
                        "day.gather.each-gallon", Map.of("amount", v.text(style, Rounding.UP)))));
    new TreeMap<>(amounts.fills())
        .forEach(
            (size, n) ->
                parts.add(
                    words.text(
                        "day.gather.fills",
                        Map.of("jars", words.number(n) + " " + name(size, n)))));
    if (amounts.enough()) {
      parts.add(words.text("day.gather.enough"));
    }
    if (amounts.toTaste()) {
      parts.add(words.text("formula.to-taste"));
    }
    return String.join(" + ", parts);
  }

  private String weight(Amounts.Weight weight) {
    String about = weight.about().text(style, Rounding.UP);
    String most = weight.most().text(style, Rounding.UP);
    if (!weight.estimate()) {
      return most;
    }
    return about.equals(most)
        ? words.text("day.gather.about", Map.of("about", about))
        : words.text("day.gather.produce", Map.of("about", about, "most", most));
  }

  /** In what bottles hold: a pint or quarts, half a litre or litres. */
  private String bottles(Volume used) {
    Fraction exact = used.inMillilitres();
    Volume us =
        exact.compareTo(PINT) <= 0
            ? Volume.of(Fraction.ONE, Volume.Unit.PINT)
            : whole(used, Volume.Unit.QUART);
    Volume metric =
        exact.compareTo(HALF_LITRE) <= 0
            ? Volume.of(HALF_LITRE, Volume.Unit.ML)
            : whole(used, Volume.Unit.L);
    return style.joinVolumes(
        us.text(style.only(Units.US), Rounding.UP),
        metric.text(style.only(Units.METRIC), Rounding.UP));
  }

  /** To the next quarter cup or half spoon: a shop sells no odd spoonfuls. */
  private static Volume inCups(Volume exact) {
    if (exact.in(Volume.Unit.CUP).compareTo(QUARTER) >= 0) {
      return Volume.of(Rounding.UP.toStep(exact.in(Volume.Unit.CUP), QUARTER), Volume.Unit.CUP);
    }
    Fraction spoons = exact.in(Volume.Unit.TBSP);
    return spoons.compareTo(Fraction.ONE) < 0
        ? exact
        : Volume.of(Rounding.UP.toStep(spoons, HALF), Volume.Unit.TBSP);
  }

  private static Volume whole(Volume used, Volume.Unit bottle) {
    return Volume.of(Rounding.UP.toStep(used.in(bottle), Fraction.ONE), bottle);
  }

  private String pieces(Fraction number, String unit) {
    Fraction whole = Rounding.UP.toStep(number, Fraction.ONE);
    boolean one = whole.equals(Fraction.ONE);
    return words.text(
        "formula.unit." + unit.replace(' ', '-') + (one ? ".one" : ".other"),
        Map.of("n", whole.toString()));
  }

  /** Without a list of kinds in brackets. */
  private static String shortName(String name) {
    int kinds = name.endsWith(")") ? name.indexOf(" (") : -1;
    return kinds > 0 && name.length() - kinds > LONG_KINDS ? name.substring(0, kinds) : name;
  }

  private String note(ShoppingLine line) {
    List<String> parts = new ArrayList<>();
    if (line.optional()) {
      parts.add(words.text("day.gather.optional"));
    }
    if (!line.choice().isEmpty()) {
      parts.add(words.text("day.gather.choice", Map.of("of", ingredient.apply(line.choice()))));
    }
    if (line.oneMaking()) {
      parts.add(words.text("day.gather.one-making"));
    }
    boolean several = batches.stream().map(Batch::product).distinct().count() > 1;
    if (several) {
      parts.add(
          line.batches().stream()
              .map(b -> shortName(productName.apply(b.product())))
              .distinct()
              .collect(Collectors.joining(", ")));
    }
    if (line.aisle() == Aisle.PRODUCE || line.aisle() == Aisle.MEAT) {
      line.batches().stream()
          .map(b -> b.plan().notes().from())
          .filter(from -> !from.isEmpty())
          .distinct()
          .forEach(parts::add);
    }
    return String.join(" · ", parts);
  }
}
