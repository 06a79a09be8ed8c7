package jarwright.cli;

import jarwright.batch.Batch;
import jarwright.batch.FormulaMultiple;
import jarwright.batch.JarRange;
import jarwright.batch.ProduceRange;
import jarwright.process.AltitudeBand;
import jarwright.process.Headspace;
import jarwright.process.SaltRule;
import jarwright.process.TestedProcess;
import jarwright.quantity.Altitude;
import jarwright.quantity.Mass;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A batch's figures as lines of text. */
final class CheckText {
  private final Batch batch;
  private final Style style;
  private final StringBuilder out = new StringBuilder();

  CheckText(Batch batch) {
    this.batch = batch;
    this.style = Style.english(batch.kitchen().units());
  }

  /**
   * The lines, each ended.
   *
   * @param loads jars in each canner load
   */
  String text(List<Integer> loads) {
    out.append(batch.lot()).append("  ").append(batch.product().name());
    out.append(", ").append(batch.pack()).append(" pack, ").append(batch.jar()).append('\n');
    line("process", process(batch.process()));
    line("altitude", batch.kitchen().altitude().text(Style.english(Units.BOTH)));
    line("source", batch.row().source() + ", band " + band(batch.row().band()));
    HighText.of(batch.method(), batch.kitchen().altitude()).ifPresent(h -> line("caution", h));
    batch.printedFor().ifPresent(j -> line("jar size", "processed as a " + j + ", by Guide 1"));
    batch.sterilise().ifPresent(m -> line("jars first", "boil the empty jars " + m + " min"));
    batch
        .acid()
        .ifPresent(
            a ->
                line(
                    "acid",
                    a.each().text(style, Rounding.UP)
                        + " "
                        + a.kind()
                        + " in every jar, "
                        + a.total().text(style, Rounding.UP)
                        + " in all"));
    salt().ifPresent(s -> line("salt", s));
    batch
        .syrup()
        .ifPresent(
            s ->
                line(
                    "syrup",
                    s.syrup()
                        + ": "
                        + s.sugar().text(style, Rounding.UP)
                        + " sugar in "
                        + s.water().text(style, Rounding.UP)
                        + " water"));
    line(
        "headspace",
        batch.headspace().stream().map(this::headspace).collect(Collectors.joining(", ")));
    batch.formula().ifPresent(f -> line("formula", formula(f)));
    produce().ifPresent(p -> line("produce", p));
    line("jars", jars(batch.expected()));
    batch.formula().flatMap(f -> f.less(batch.jar())).ifPresent(this::less);
    line("canner", batch.canner().name() + ": " + loads(loads));
    line("use by", batch.useBy().toString());
    return out.toString();
  }

  private void line(String name, String text) {
    out.append(String.format(Locale.ROOT, "  %-11s %s%n", name, text));
  }

  private Optional<String> salt() {
    boolean without = batch.plan().salt().filter(wanted -> !wanted).isPresent();
    return without && batch.product().salt().kind() == SaltRule.Kind.IN_FORMULA
        ? Optional.of("as the formula has it; it is for taste and may be left out")
        : batch.salt().map(s -> s.text(style, Rounding.NEAREST) + " a jar");
  }

  private String process(TestedProcess process) {
    String held = process.pressure().map(p -> " at " + p.text(style)).orElse("");
    return batch.method() + ", " + process.minutes() + " min" + held;
  }

  /** In feet alone, as the table prints it: in metres its ends would lie between two whole ones. */
  private static String band(AltitudeBand band) {
    Style feet = Style.english(Units.US);
    String from = Altitude.feet(band.fromFeet()).text(feet);
    return band.toFeet().isPresent()
        ? from + " to " + Altitude.feet(band.toFeet().getAsInt()).text(feet)
        : from + " and above";
  }

  private String headspace(Headspace space) {
    String of = space.of().isEmpty() ? "" : " (" + space.of() + ")";
    return space.depth().text(style, Rounding.NEAREST) + of;
  }

  private String jars(JarRange expected) {
    String lids = batch.jars() + ", as many new lids";
    int asked = batch.asked().orElse(batch.jars());
    String fewer = asked == batch.jars() ? "" : "; the plan asks for " + asked;
    return expected.isExact() && fewer.isEmpty()
        ? lids
        : lids + "; expect " + range(expected) + fewer;
  }

  private static String range(JarRange jars) {
    return jars.isExact() ? String.valueOf(jars.most()) : jars.fewest() + " to " + jars.most();
  }

  /** What the plan can say for a smaller batch, where it asks for fewer jars than are filled. */
  private void less(FormulaMultiple less) {
    JarRange fills = less.fills(batch.jar()).orElseThrow();
    if (batch.asked().isPresent() && batch.asked().getAsInt() < batch.jars()) {
      line(
          "or less",
          "jars: " + fills.most() + " takes " + formula(less) + ", fills " + range(fills));
    }
  }

  /** As the plan gives it, else what so many jars take. */
  private Optional<String> produce() {
    return batch
        .plan()
        .amount()
        .fold(
            jars -> batch.produce().map(this::produce),
            mass -> Optional.of(mass.text(style, Rounding.NEAREST) + ", as planned" + taken(mass)));
  }

  /** What a formula leaves of the produce that there is. */
  private String taken(Mass planned) {
    return batch
        .formula()
        .flatMap(FormulaMultiple::mainProduce)
        .filter(taken -> taken.compareTo(planned) < 0)
        .map(taken -> "; the formula takes " + taken.text(style, Rounding.UP))
        .orElse("");
  }

  private String produce(ProduceRange range) {
    if (range.isExact()) {
      return range.most().text(style, Rounding.UP);
    }
    return "about "
        + range.about().text(style, Rounding.UP)
        + ", at most "
        + range.most().text(style, Rounding.UP);
  }

  /** How often it is made, where the guide prints what it gives. */
  private static String formula(FormulaMultiple formula) {
    String printed = formula.formula().yield();
    return formula.times().isEmpty()
        ? "made as often as it takes"
        : formula.times().get()
            + " × "
            + (formula.formula().jars().isPresent() ? printed : "the formula " + printed);
  }

  private static String loads(List<Integer> loads) {
    String sizes = loads.stream().map(String::valueOf).collect(Collectors.joining(" + "));
    return loads.size() == 1 ? "1 load" : loads.size() + " loads: " + sizes;
  }
}
