package jarwright.process;

import jarwright.quantity.Altitude;
import jarwright.quantity.Fraction;
import jarwright.quantity.Temperature;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The temperature at which jelly without added pectin is cooked enough, by altitude. It decides how
 * firm a jelly sets and nothing else: the process in the jar does not hang on it.
 */
public final class GelPoints {
  private final List<Row> rows;

  /** One printed figure. */
  public record Row(Altitude at, Temperature gel, Source source) {}

  /**
   * Takes the printed rows, lowest first.
   *
   * @throws IllegalArgumentException when there are none or they do not rise
   */
  public GelPoints(List<Row> rows) {
    for (int i = 1; i < rows.size(); i++) {
      if (rows.get(i).at().compareTo(rows.get(i - 1).at()) <= 0) {
        throw new IllegalArgumentException("gel points are listed from the lowest altitude up");
      }
    }
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("there are no gel points");
    }
    this.rows = List.copyOf(rows);
  }

  /**
   * The row nearest to a kitchen, of two equally near ones the lower, whose temperature is higher:
   * jelly cooked too little stays soft. None above the highest row, where the guide prints nothing
   * and only the sheet test tells.
   */
  public Optional<Temperature> nearest(Altitude kitchen) {
    if (kitchen.compareTo(rows.get(rows.size() - 1).at()) > 0) {
      return Optional.empty();
    }
    return rows.stream().min(Comparator.comparing(r -> distance(r, kitchen))).map(Row::gel);
  }

  private static Fraction distance(Row row, Altitude kitchen) {
    Fraction feet = row.at().inFeet().minus(kitchen.inFeet());
    return feet.signum() < 0 ? Fraction.ZERO.minus(feet) : feet;
  }
}
