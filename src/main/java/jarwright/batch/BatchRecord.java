package jarwright.batch;

import jarwright.lot.LotCode;
import jarwright.plan.BatchPlan;
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
import jarwright.quantity.Mass;
import jarwright.quantity.Rounding;
import jarwright.quantity.Volume;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * A batch as it was planned, frozen: what a record page, a trace or a later look at the jars needs,
 * without the tables or the plan it came from.
 *
 * @param household as the kitchen was called; may be empty
 */
public record BatchRecord(
    LotCode lot,
    Origin origin,
    String household,
    Food food,
    Processing processing,
    Additions additions,
    Jars jars,
    Days days,
    BatchPlan.Notes notes) {

  /**
   * The place in the plan by which a plan that is read again finds its lot.
   *
   * @param plan the plan file's name, without its folder
   * @param position of the batch in it, from 1
   */
  public record Origin(String plan, int position) {}

  /**
   * What is in the jars.
   *
   * @param product its id in the process tables
   * @param name as the guide has it, in English
   */
  public record Food(String product, String name, Pack pack, JarSize jar) {}

  /**
   * How it has to be processed.
   *
   * @param band for which the time is printed
   * @param printedFor the size whose printed time serves the jar's, where the guide lists no own
   * @param sterilise minutes to boil the empty jars first, where that is needed
   */
  public record Processing(
      Method method,
      TestedProcess tested,
      Altitude altitude,
      AltitudeBand band,
      Source source,
      Optional<JarSize> printedFor,
      Optional<Integer> sterilise) {}

  /** The acid for each jar. */
  public record Acid(AcidKind kind, Volume each) {}

  /**
   * What goes in besides the food, and the room left.
   *
   * @param salt for each jar
   * @param formulaTimes how often the fixed formula is made, where that is counted
   */
  public record Additions(
      Optional<Acid> acid,
      Optional<Volume> salt,
      Optional<Syrup> syrup,
      Optional<Fraction> formulaTimes,
      List<Headspace> headspace) {
    public Additions {
      headspace = List.copyOf(headspace);
    }
  }

  /**
   * The jars and the canner.
   *
   * @param ready jars made ready, numbered from 1
   * @param expected how many of them the produce may fill
   * @param produce fresh weight for that many: at best and at worst, each rounded up to the quarter
   *     pound; empty where the guide prints none
   * @param loads jars in each canner load, in order; their sum is {@code ready}
   */
  public record Jars(
      int ready, JarRange expected, Optional<Weight> produce, String canner, List<Integer> loads) {
    public Jars {
      loads = List.copyOf(loads);
      if (loads.stream().anyMatch(n -> n < 1)
          || loads.stream().mapToInt(Integer::intValue).sum() != ready) {
        throw new IllegalArgumentException("loads " + loads + " do not make " + ready + " jars");
      }
    }
  }

  /** A range of weights. */
  public record Weight(Mass least, Mass most) {
    static Weight of(ProduceRange range) {
      return new Weight(quarterPounds(range.least()), quarterPounds(range.most()));
    }

    private static Mass quarterPounds(Mass mass) {
      return Mass.pounds(Rounding.UP.toStep(mass.inPounds(), Fraction.of(1, 4)));
    }
  }

  /**
   * When.
   *
   * @param start of the work, where the plan or its timeline gives one
   * @param times planned start of each load's process, in order; empty where no timeline was made
   */
  public record Days(
      LocalDate packed, Optional<LocalTime> start, List<LocalTime> times, LocalDate useBy) {
    public Days {
      times = List.copyOf(times);
    }
  }

  /** Whether the other tells of the same jars of the same food on the same day. */
  public boolean isLike(BatchRecord other) {
    return food.equals(other.food)
        && processing.method() == other.processing.method()
        && jars.ready() == other.jars.ready()
        && days.packed().equals(other.days.packed());
  }

  /**
   * The record of a batch worked out.
   *
   * @param loads jars in each canner load
   * @param times planned start of each load's process; empty where there is no timeline
   */
  public static BatchRecord of(Batch batch, List<Integer> loads, List<LocalTime> times) {
    BatchPlan plan = batch.plan();
    return new BatchRecord(
        batch.lot(),
        new Origin(plan.plan(), plan.position()),
        batch.kitchen().household(),
        new Food(batch.product().id(), batch.product().name(), batch.pack(), batch.jar()),
        new Processing(
            batch.method(),
            batch.process(),
            batch.kitchen().altitude(),
            batch.row().band(),
            batch.row().source(),
            batch.printedFor(),
            batch.sterilise()),
        new Additions(
            batch.acid().map(a -> new Acid(a.kind(), a.each())),
            batch.salt(),
            batch.syrup().map(SyrupNeed::syrup),
            batch.formula().flatMap(FormulaMultiple::times),
            batch.headspace()),
        new Jars(
            batch.jars(),
            batch.expected(),
            batch.produce().map(Weight::of),
            batch.canner().name(),
            loads),
        new Days(plan.date(), plan.start(), times, batch.useBy().date()),
        plan.notes());
  }
}
