package jarwright.benchmark;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The law {@code factor · size^exponent} that lies nearest to what was measured, by least squares
 * of the logarithms over all sizes.
 *
 * @param error standard error of the exponent; NaN of two sizes
 */
record Power(double factor, double exponent, double error) {

  /** The law of at least two sizes. */
  static Power of(List<Measured> sizes, ToDoubleFunction<Measured> figure) {
    int n = sizes.size();
    double[] x = sizes.stream().mapToDouble(m -> Math.log(m.size())).toArray();
    double[] y = sizes.stream().mapToDouble(m -> Math.log(figure.applyAsDouble(m))).toArray();
    double meanX = mean(x);
    double meanY = mean(y);
    double xx = 0;
    double xy = 0;
    for (int i = 0; i < n; i++) {
      xx += (x[i] - meanX) * (x[i] - meanX);
      xy += (x[i] - meanX) * (y[i] - meanY);
    }
    double slope = xy / xx;
    double off = 0;
    for (int i = 0; i < n; i++) {
      double residue = y[i] - meanY - slope * (x[i] - meanX);
      off += residue * residue;
    }
    double error = n > 2 ? Math.sqrt(off / (n - 2) / xx) : Double.NaN;
    return new Power(Math.exp(meanY - slope * meanX), slope, error);
  }

  double at(double size) {
    return factor * Math.pow(size, exponent);
  }

  private static double mean(double[] numbers) {
    double sum = 0;
    for (double number : numbers) {
      sum += number;
    }
    return sum / numbers.length;
  }
}
