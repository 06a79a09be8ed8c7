package jarwright.batch;

import jarwright.plan.Cover;
import jarwright.process.AcidKind;
import jarwright.process.Aisle;
import jarwright.process.Buying;
import jarwright.process.FormulaLine;
import jarwright.process.JarSize;
import jarwright.process.Purchase;
import jarwright.process.SaltRule;
import jarwright.process.Supply;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import jarwright.quantity.Rounding;
import jarwright.quantity.Volume;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** All that batches take, each thing once, in what is bought. */
public final class Shopping {
  private static final Map<AcidKind, String> ACIDS =
      Map.of(
          AcidKind.CITRIC_ACID, "citric acid",
          AcidKind.BOTTLED_LEMON_JUICE, "bottled lemon juice",
          AcidKind.VINEGAR, "vinegar (5%)");
  private static final String SALT = "canning or pickling salt";
  private static final String SUGAR = "sugar";
  private static final String FRUIT_JUICE = "apple or white grape juice";

  private record Key(String what, Aisle aisle, boolean optional, String choice, boolean oneMaking) {
    static Key of(String what, Aisle aisle) {
      return new Key(what, aisle, false, "", false);
    }
  }

  private final Buying buying;
  private final Map<Key, Amounts> amounts = new LinkedHashMap<>();
  private final Map<Key, Set<Batch>> takers = new LinkedHashMap<>();

  private Shopping(Buying buying) {
    this.buying = buying;
  }

  /** What to buy for the batches: produce first, and of each kind what the first batch takes. */
  public static List<ShoppingLine> of(List<Batch> batches, Buying buying) {
    Shopping shopping = new Shopping(buying);
    for (Batch batch : batches) {
      buying.supplies(batch.product(), batch.pack()).forEach(s -> shopping.supply(batch, s));
      batch.formula().ifPresent(f -> shopping.formula(batch, f));
      shopping.additions(batch);
    }
    return shopping.lines();
  }

  /** The jars to have ready, by size; a new lid belongs to each. */
  public static Map<JarSize, Integer> jars(List<Batch> batches) {
    Map<JarSize, Integer> jars = new EnumMap<>(JarSize.class);
    batches.forEach(b -> jars.merge(b.jar(), b.jars(), Integer::sum));
    return jars;
  }

  private List<ShoppingLine> lines() {
    List<ShoppingLine> lines = new ArrayList<>();
    amounts.forEach(
        (key, sum) ->
            lines.add(
                new ShoppingLine(
                    key.what(),
                    key.aisle(),
                    sum,
                    key.optional(),
                    key.choice(),
                    key.oneMaking(),
                    List.copyOf(takers.get(key)))));
    lines.sort(Comparator.comparing(ShoppingLine::aisle));
    return List.copyOf(lines);
  }

  private void add(Batch batch, Key key, Amounts more) {
    amounts.merge(key, more, Amounts::plus);
    takers.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(batch);
  }

  private void supply(Batch batch, Supply supply) {
    add(
        batch,
        new Key(supply.what(), supply.aisle(), supply.optional(), "", false),
        amount(batch, supply));
  }

  private static Amounts amount(Batch batch, Supply supply) {
    return switch (supply.per()) {
      case SHARE -> Amounts.of(share(batch, supply.part()));
      case QUART -> volume(supply, batch.jar().quarts().times(batch.jars()));
      case JAR -> volume(supply, Fraction.of(batch.jars()));
      case WEIGHT ->
          volume(
              supply,
              share(batch, Fraction.ONE)
                  .most()
                  .inPounds()
                  .dividedBy(supply.mass().orElseThrow().inPounds()));
      case GALLON -> Amounts.eachGallon(supply.volume().orElseThrow());
      case COVER ->
          supply
              .mass()
              .map(m -> m.times(batch.covering().in(Volume.Unit.QUART)))
              .map(m -> Amounts.of(Amounts.Weight.estimated(m)))
              .orElseGet(() -> Amounts.of(batch.covering()));
      case ENOUGH -> Amounts.ENOUGH;
      case JARS -> Amounts.fills(batch.jar(), batch.jars());
      case TASTE -> Amounts.TO_TASTE;
    };
  }

  private static Amounts volume(Supply supply, Fraction times) {
    return Amounts.of(supply.volume().orElseThrow().times(times));
  }

  /** Of the produce that there is where the plan gives it, else of what so many jars take. */
  private static Amounts.Weight share(Batch batch, Fraction part) {
    return planned(batch)
        .map(mass -> Amounts.Weight.exactly(mass.times(part)))
        .orElseGet(
            () -> {
              ProduceRange range = batch.produce().orElseThrow();
              return new Amounts.Weight(range.about().times(part), range.most().times(part), true);
            });
  }

  private static Optional<Mass> planned(Batch batch) {
    return batch.plan().amount().fold(jars -> Optional.empty(), Optional::of);
  }

  private void formula(Batch batch, FormulaMultiple formula) {
    Optional<FormulaLine> main = formula.formula().mainProduce();
    List<FormulaLine> printed = formula.formula().lines();
    for (int i = 0; i < printed.size(); i++) {
      FormulaLine line = formula.lines().get(i);
      Purchase purchase = buying.of(line);
      if (purchase.isNothing() || line.isInstead()) {
        continue;
      }
      boolean oneMaking = formula.times().isEmpty() && !line.isPerJar();
      Optional<Mass> there = main.filter(printed.get(i)::equals).flatMap(m -> planned(batch));
      add(
          batch,
          new Key(purchase.what(), purchase.aisle(), line.isOptional(), line.choice(), oneMaking),
          there
              .map(mass -> Amounts.of(Amounts.Weight.exactly(mass)))
              .orElseGet(() -> amount(line, purchase, batch.jars())));
    }
  }

  private static Amounts amount(FormulaLine line, Purchase purchase, int jars) {
    if (line.isToTaste()) {
      return Amounts.TO_TASTE;
    }
    if (line.isPerJar()) {
      return Amounts.pieces(line.most().times(jars), "each");
    }
    Optional<Mass> weighed = purchase.weighing().flatMap(w -> w.of(line.most(), line.unit()));
    if (weighed.isPresent()) {
      return purchase
          .piece()
          .flatMap(piece -> pieces(weighed.get(), piece))
          .orElseGet(() -> Amounts.of(Amounts.Weight.estimated(weighed.get())));
    }
    return Volume.Unit.named(line.unit())
        .map(unit -> Amounts.of(Volume.of(line.most(), unit)))
        .or(
            () ->
                Mass.Unit.named(line.unit())
                    .map(unit -> new Mass(line.most(), unit))
                    .map(mass -> Amounts.of(Amounts.Weight.exactly(mass))))
        .orElseGet(
            () ->
                Amounts.pieces(
                    line.most(), purchase.piece().map(Purchase.Piece::unit).orElse(line.unit())));
  }

  private static Optional<Amounts> pieces(Mass mass, Purchase.Piece piece) {
    return piece
        .mass()
        .map(one -> mass.inGrams().dividedBy(one.inGrams()))
        .map(n -> Amounts.pieces(Rounding.UP.toStep(n, Fraction.ONE), piece.unit()));
  }

  /** What goes into the jars besides produce and formula. */
  private void additions(Batch batch) {
    batch
        .acid()
        .ifPresent(
            acid ->
                add(batch, Key.of(ACIDS.get(acid.kind()), Aisle.ACID), Amounts.of(acid.total())));
    boolean besides =
        batch.formula().isEmpty() || batch.product().salt().kind() == SaltRule.Kind.TASTE;
    batch
        .salt()
        .filter(salt -> besides)
        .ifPresent(
            salt ->
                add(
                    batch,
                    Key.of(SALT, Aisle.SALT),
                    Amounts.of(salt.times(Fraction.of(batch.jars())))));
    batch
        .syrup()
        .ifPresent(syrup -> add(batch, Key.of(SUGAR, Aisle.SUGAR), weighed(SUGAR, syrup.sugar())));
    batch
        .plan()
        .cover()
        .filter(Cover.JUICE::equals)
        .ifPresent(
            juice -> add(batch, Key.of(FRUIT_JUICE, Aisle.GROCERY), Amounts.of(batch.covering())));
  }

  private Amounts weighed(String ingredient, Volume volume) {
    FormulaLine line =
        new FormulaLine(
            ingredient, volume.amount(), volume.amount(), volume.unit().spellings().get(0), "");
    return amount(line, buying.of(line), 0);
  }
}
