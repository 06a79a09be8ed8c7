package jarwright.batch;

import jarwright.lot.LotCode;
import jarwright.lot.UseBy;
import jarwright.plan.Amount;
import jarwright.plan.BatchPlan;
import jarwright.plan.Cover;
import jarwright.plan.Kitchen;
import jarwright.problem.Problems;
import jarwright.process.AcidDose;
import jarwright.process.AcidKind;
import jarwright.process.AcidRule;
import jarwright.process.Answer;
import jarwright.process.Formula;
import jarwright.process.JarSize;
import jarwright.process.Pack;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.SaltRule;
import jarwright.process.Setting;
import jarwright.process.Syrup;
import jarwright.process.SyrupRow;
import jarwright.process.TestedProcess;
import jarwright.quantity.Mass;
import jarwright.quantity.Volume;
import java.util.List;
import java.util.Optional;

/** Works a plan out to the batch that the print-outs show, or tells every reason why not. */
public final class BatchReckoner {
  private static final String FRUIT = "fruit";

  private final ProcessBook book;
  private final Kitchen kitchen;

  public BatchReckoner(ProcessBook book, Kitchen kitchen) {
    this.book = book;
    this.kitchen = kitchen;
  }

  /**
   * The batch, or none where a problem was told.
   *
   * @param lot the name that the batch is to carry
   */
  public Optional<Batch> reckon(BatchPlan plan, LotCode lot, Problems problems) {
    Problems here = new Problems();
    Optional<Choice> choice = new Chooser(plan, kitchen, book, here).choose();
    Optional<FormulaMultiple> formula = formula(plan);
    JarRange expected = expected(plan, formula, here);
    Optional<AcidPerJar> acid = acid(plan, Math.max(1, expected.most()), here);
    checkCover(plan, here);
    checkSalt(plan, here);
    problems.addAll(here.list());
    if (choice.isEmpty() || !here.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(batch(plan, lot, choice.get(), formula, expected, acid));
  }

  private Batch batch(
      BatchPlan plan,
      LotCode lot,
      Choice choice,
      Optional<FormulaMultiple> formula,
      JarRange expected,
      Optional<AcidPerJar> acid) {
    int jars = expected.most();
    JarSize jar = plan.jar();
    TestedProcess process = choice.row().process().orElseThrow();
    return new Batch(
        lot,
        plan,
        kitchen,
        choice.canner(),
        choice.pack(),
        choice.row(),
        choice.offered(),
        choice.printedFor(),
        jars,
        expected,
        recan(plan, choice),
        acid,
        salt(plan),
        plan.cover().flatMap(Cover::syrup).map(s -> SyrupNeed.of(book.syrup(s, jar), jars, jar)),
        formula
            .flatMap(FormulaMultiple::mainProduce)
            .map(ProduceRange::exactly)
            .or(() -> perJar(plan).map(p -> p.forJars(jars))),
        formula,
        plan.product().headspace().of(choice.pack(), jar),
        process.needsSterileJars()
            ? Optional.of(JarSterilising.minutesAt(kitchen.altitude()))
            : Optional.empty(),
        UseBy.after(plan.date(), kitchen.monthsToUseBy()),
        covering(jars, jar));
  }

  private Volume covering(int jars, JarSize jar) {
    SyrupRow row = book.syrup(Syrup.VERY_LIGHT, jar);
    return row.water().times(row.share(jars, jar));
  }

  /**
   * Whether a jar that did not seal may be canned again: Nebraska Extension, Saving Home-Canned
   * Food in Jars That Did Not Seal (hot pack directions, not dense); Kansas State Extension, You
   * Asked It! 3096 (a tested hot-pack process).
   */
  private boolean recan(BatchPlan plan, Choice choice) {
    Setting hot =
        new Setting(
            plan.product(), choice.row().method(), Pack.HOT, plan.jar(), kitchen.altitude());
    return !plan.product().isDense() && book.lookUp(hot) instanceof Answer.Found;
  }

  private static Optional<ProducePerJar> perJar(BatchPlan plan) {
    return ProducePerJar.of(plan.product().produce(), plan.jar());
  }

  private Optional<FormulaMultiple> formula(BatchPlan plan) {
    Product product = plan.product();
    List<Formula> printed = book.formulas(product.id());
    return plan.amount()
        .fold(
            jars -> FormulaMultiple.filling(printed, jars, plan.jar(), product),
            mass -> FormulaMultiple.from(printed, mass, plan.jar(), product));
  }

  /** The jars that the plan's amount comes to. */
  private JarRange expected(BatchPlan plan, Optional<FormulaMultiple> formula, Problems problems) {
    Optional<JarRange> made = formula.flatMap(f -> f.fills(plan.jar()));
    return plan.amount()
        .fold(
            jars ->
                made.map(range -> range.within(Amount.MOST_JARS)).orElse(JarRange.exactly(jars)),
            mass -> fromProduce(plan, mass, formula, made, problems));
  }

  private JarRange fromProduce(
      BatchPlan plan,
      Mass mass,
      Optional<FormulaMultiple> formula,
      Optional<JarRange> made,
      Problems problems) {
    Optional<JarRange> fromWeight =
        made.or(
            () ->
                book.formulas(plan.product().id()).stream().anyMatch(f -> f.jars().isPresent())
                    ? Optional.empty()
                    : perJar(plan).map(p -> p.fromProduce(mass)));
    if (fromWeight.isEmpty()) {
      problems.add(
          plan.placeOf("produce"),
          "the guide prints no weight of produce for " + plan.product().id(),
          "give the number of jars instead");
      return JarRange.exactly(1);
    }
    JarRange range = fromWeight.get();
    if (range.most() < 1 || formula.filter(FormulaMultiple::isNothing).isPresent()) {
      problems.add(
          plan.placeOf("produce"),
          mass + " does not fill one " + plan.jar() + " jar" + tooLittle(formula),
          "take more, or a smaller jar");
    } else if (range.most() > Amount.MOST_JARS) {
      problems.add(
          plan.placeOf("produce"),
          mass + " makes more than " + Amount.MOST_JARS + " jars",
          "check the unit, or divide it into batches");
    }
    return range;
  }

  /** What the least amount of a formula takes, where that is what is wanting. */
  private static String tooLittle(Optional<FormulaMultiple> formula) {
    return formula
        .filter(f -> f.mainProduce().isPresent())
        .map(FormulaMultiple::least)
        .map(
            least ->
                ": "
                    + (least.singly() ? "one formula" : "half the formula")
                    + " takes "
                    + least.mainProduce().orElseThrow()
                    + " of "
                    + least.formula().mainProduce().orElseThrow().ingredient())
        .orElse("");
  }

  private static Optional<AcidPerJar> acid(BatchPlan plan, int jars, Problems problems) {
    AcidRule rule = plan.product().acid();
    String name = plan.product().id();
    String choices = String.join(" or ", rule.choices().stream().map(AcidKind::id).toList());
    if (plan.acid().isEmpty()) {
      if (rule.needsChoice()) {
        problems.add(
            plan.placeOf("acid"),
            name + " needs acid in every jar, and the plan gives none",
            "add acid: " + choices);
      }
      return Optional.empty();
    }
    AcidKind kind = plan.acid().get();
    if (!rule.choices().contains(kind)) {
      String remedy =
          rule.needsChoice()
              ? "tested: " + choices
              : "leave acid: out; what the guide's formula has is printed on the checklist";
      problems.add(
          plan.placeOf("acid"), name + " has no tested dose of " + kind + " by the jar", remedy);
      return Optional.empty();
    }
    Optional<AcidDose> dose = ((AcidRule.PerJar) rule).dose(kind, plan.jar());
    return dose.map(d -> new AcidPerJar(kind, d.amount(), jars));
  }

  private static Optional<Volume> salt(BatchPlan plan) {
    SaltRule rule = plan.product().salt();
    boolean wanted = plan.salt().orElse(false) || rule.isFixed();
    return wanted ? rule.perJar(plan.jar()) : Optional.empty();
  }

  private static void checkSalt(BatchPlan plan, Problems problems) {
    boolean without = plan.salt().filter(wanted -> !wanted).isPresent();
    if (without && plan.product().salt().kind() == SaltRule.Kind.BRINE) {
      problems.add(
          plan.placeOf("salt"),
          plan.product().id()
              + " is not safe without its salt: the salt keeps harmful germs down while the food"
              + " stands in brine, and is never left out or cut down (AIB 539 Guide 6)",
          "write salt: yes, or leave salt: out; for less salt choose a quick pickle");
    }
  }

  private static void checkCover(BatchPlan plan, Problems problems) {
    if (plan.cover().isPresent() && !plan.product().category().equals(FRUIT)) {
      problems.add(
          plan.placeOf("syrup"),
          plan.product().id() + " is not packed in syrup",
          "leave syrup: out; it is for plain fruit");
    }
  }
}
