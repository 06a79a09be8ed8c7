package jarwright.render;

import jarwright.page.DoesNotFit;
import java.util.List;

/**
 * The widths of columns side by side: a number is mm, {@code *} or {@code 2*} a share of what is
 * left.
 */
final class Widths {
  private final Element at;
  private final double[] fixed;
  private final double[] shares;
  private final double gap;

  /** Reads the list {@code attribute}; {@code gap} pt lie between columns. */
  Widths(Element element, String attribute, double gap) {
    List<String> words = element.list(attribute);
    this.at = element;
    this.gap = gap;
    this.fixed = new double[words.size()];
    this.shares = new double[words.size()];
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      boolean share = word.endsWith("*");
      String number = share ? word.substring(0, word.length() - 1) : word;
      double value = number.isEmpty() && share ? 1 : parse(element, attribute, word, number);
      shares[i] = share ? value : 0;
      fixed[i] = share ? 0 : Units.pt(value);
    }
  }

  private static double parse(Element element, String attribute, String word, String number) {
    try {
      double value = Double.parseDouble(number);
      if (value > 0 && value < 10_000) {
        return value;
      }
    } catch (NumberFormatException e) {
      // told below
    }
    throw element.bad(attribute, word, "widths in mm or shares as 25 * 2*");
  }

  int count() {
    return fixed.length;
  }

  /** The widths in pt within {@code width}. */
  double[] within(double width) {
    double left = width - gap * (fixed.length - 1);
    double allShares = 0;
    for (int i = 0; i < fixed.length; i++) {
      left -= fixed[i];
      allShares += shares[i];
    }
    if (left < -0.5 || (allShares > 0 && left < 3 * allShares)) {
      throw new DoesNotFit(
          at.where() + " columns", Units.mm(width - left + 3 * allShares), Units.mm(width));
    }
    double[] widths = new double[fixed.length];
    for (int i = 0; i < fixed.length; i++) {
      widths[i] = shares[i] > 0 ? left * shares[i] / allShares : fixed[i];
    }
    return widths;
  }
}
