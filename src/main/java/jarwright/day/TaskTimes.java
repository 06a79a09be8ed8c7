package jarwright.day;

import jarwright.plan.OwnTime;
import jarwright.process.Product;
import jarwright.quantity.Fraction;
import jarwright.quantity.Rounding;
import jarwright.water.Estimate;
import java.util.ArrayList;
import java.util.List;

/** How long hand work and pots take: base figures that scale with produce, jars and hands. */
public final class TaskTimes {
  private final List<Row> rows;

  /** What a part of the time goes by. */
  public enum Each {
    LOAD,
    POUND,
    JAR,
    /** Of filled jars, cooked in one pot. */
    QUART
  }

  /** How much is made at a time. */
  public enum Makes {
    /** What one load of the canner takes. */
    LOAD,
    /** All of the batch. */
    BATCH
  }

  /** So much of a product: what the time of a task may go by. */
  public record Amount(Fraction pounds, int jars, Fraction quarts) {}

  /**
   * One base figure, in minutes of one pair of hands.
   *
   * @param of a product, a category of products, or {@code *} for all; the nearer one counts
   * @param fixed for the load as a whole
   * @param each further minutes for each pound or jar; zero where nothing goes by the amount
   * @param hands pairs that can share the work; 0 where it needs none
   * @param pots burners it takes besides those that heat jars and food
   * @param makes how much is made at a time
   * @param potFrom quarts in the pot at the start for each quart that is filled into jars
   * @param own whether the household gave it: then it is all the time that the task takes
   */
  public record Row(
      TaskKind kind,
      String of,
      Span fixed,
      Span each,
      Each by,
      int hands,
      int pots,
      Makes makes,
      Fraction potFrom,
      boolean own) {
    public Row {
      if (potFrom.compareTo(Fraction.ONE) < 0) {
        throw new IllegalArgumentException("a pot holds what goes into the jars");
      }
      if (hands < 0 || hands > 9 || pots < 0 || pots > 1) {
        throw new IllegalArgumentException("0 to 9 pairs of hands, 0 or 1 pot");
      }
    }

    private int nearness(Product product) {
      if (of.equals(product.id())) {
        return 2;
      }
      return of.equals(product.category()) ? 1 : of.equals(ALL) ? 0 : -1;
    }
  }

  /** From a least to a most, in minutes. */
  public record Span(Fraction least, Fraction most) {
    public Span {
      if (least.signum() < 0 || most.compareTo(least) < 0) {
        throw new IllegalArgumentException("a span runs upwards from 0 min");
      }
    }
  }

  private static final String ALL = "*";

  /**
   * Takes the base figures; the last of two equally near ones counts.
   *
   * @throws IllegalArgumentException when a kind has no figure for all products
   */
  public TaskTimes(List<Row> rows) {
    this.rows = List.copyOf(rows);
    for (Row row : rows) {
      if (rows.stream().noneMatch(r -> r.kind() == row.kind() && r.of().equals(ALL))) {
        throw new IllegalArgumentException(row.kind().id() + " needs a row for *");
      }
    }
  }

  /**
   * The same with the household's own figures, which go before equally near ones. How many hands
   * can share the work, and what it goes by, stays as it was.
   *
   * @throws IllegalArgumentException for work whose length is no matter of these figures
   */
  public TaskTimes with(List<OwnTime> own) {
    TaskTimes all = this;
    for (OwnTime time : own) {
      List<Row> more = new ArrayList<>(all.rows);
      more.add(all.own(time));
      all = new TaskTimes(more);
    }
    return all;
  }

  private Row own(OwnTime time) {
    String of = time.of().orElse(ALL);
    Row base =
        rows.stream()
            .filter(r -> r.kind().id().equals(time.task()))
            .filter(r -> r.of().equals(of) || r.of().equals(ALL))
            .reduce((a, b) -> b.of().equals(of) ? b : a)
            .orElseThrow(() -> new IllegalArgumentException("no figure for " + time.task()));
    Span none = new Span(Fraction.ZERO, Fraction.ZERO);
    return new Row(
        base.kind(),
        of,
        new Span(time.fixed().least(), time.fixed().most()),
        time.each().map(e -> new Span(e.least(), e.most())).orElse(none),
        base.by(),
        base.hands(),
        base.pots(),
        base.makes(),
        base.potFrom(),
        true);
  }

  /**
   * The figure that counts for a product.
   *
   * @throws IllegalArgumentException for a kind whose length is no matter of these figures
   */
  public Row row(TaskKind kind, Product product) {
    return rows.stream()
        .filter(r -> r.kind() == kind && r.nearness(product) >= 0)
        .reduce((a, b) -> b.nearness(product) >= a.nearness(product) ? b : a)
        .orElseThrow(() -> new IllegalArgumentException("no figure for " + kind.id()));
  }

  /**
   * Minutes for so much of a product.
   *
   * @param hands pairs at work; ignored where the work needs none
   */
  public Estimate estimate(TaskKind kind, Product product, Amount of, int hands) {
    Row row = row(kind, product);
    Fraction amount =
        switch (row.by()) {
          case LOAD -> Fraction.ZERO;
          case POUND -> of.pounds();
          case JAR -> Fraction.of(of.jars());
          case QUART -> of.quarts();
        };
    int shared = Math.max(1, Math.min(hands, row.hands()));
    return new Estimate(
        minutes(row.fixed().least(), row.each().least(), amount, shared),
        minutes(row.fixed().most(), row.each().most(), amount, shared));
  }

  private static int minutes(Fraction fixed, Fraction each, Fraction amount, int hands) {
    Fraction all = fixed.plus(each.times(amount)).dividedBy(Fraction.of(hands));
    return Rounding.UP.toStep(all, Fraction.ONE).numerator().intValueExact();
  }

  public List<Row> rows() {
    return rows;
  }
}
