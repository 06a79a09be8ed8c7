package jarwright.batch;

import jarwright.lot.LotCode;
import jarwright.lot.UseBy;
import jarwright.plan.BatchPlan;
import jarwright.plan.Canner;
import jarwright.plan.Kitchen;
import jarwright.process.Headspace;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.Product;
import jarwright.process.TableRow;
import jarwright.process.TestedProcess;
import jarwright.quantity.Volume;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A batch worked out: everything that the print-outs say of it.
 *
 * @param row the printed cell whose process is used
 * @param offered all time and pressure pairs that the table offers here, the used one among them
 * @param printedFor the size whose time is used where the guide does not list the jar's own
 * @param jars made ready: at least as many as the produce or the formula may fill
 * @param expected how many of them the produce or the formula may fill
 * @param sterilise minutes to boil the empty jars; empty where clean hot jars do
 * @param recan whether what did not seal may be canned again: hot, by a tested process, and not
 *     dense
 * @param salt for each jar
 * @param covering the liquid that covers the food in all jars, by the guide's very light syrup
 */
public record Batch(
    LotCode lot,
    BatchPlan plan,
    Kitchen kitchen,
    Canner canner,
    Pack pack,
    TableRow row,
    List<TableRow> offered,
    Optional<JarSize> printedFor,
    int jars,
    JarRange expected,
    boolean recan,
    Optional<AcidPerJar> acid,
    Optional<Volume> salt,
    Optional<SyrupNeed> syrup,
    Optional<ProduceRange> produce,
    Optional<FormulaMultiple> formula,
    List<Headspace> headspace,
    Optional<Integer> sterilise,
    UseBy useBy,
    Volume covering) {
  public Batch {
    offered = List.copyOf(offered);
    headspace = List.copyOf(headspace);
    if (row.process().isEmpty()) {
      throw new IllegalArgumentException("a batch needs a tested process");
    }
  }

  /** Its name alone: hashing all its parts by what the compiler makes slows every start. */
  @Override
  public int hashCode() {
    return lot.hashCode();
  }

  public TestedProcess process() {
    return row.process().orElseThrow();
  }

  public Product product() {
    return plan.product();
  }

  public JarSize jar() {
    return plan.jar();
  }

  public Method method() {
    return row.method();
  }

  /** The jars that the plan asks for, where it does not give produce. */
  public OptionalInt asked() {
    return plan.amount().fold(OptionalInt::of, mass -> OptionalInt.empty());
  }

  /** One new lid for each jar. */
  public int lids() {
    return jars;
  }
}
