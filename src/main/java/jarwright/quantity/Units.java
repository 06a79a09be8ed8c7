package jarwright.quantity;

import java.util.Locale;

/** Which units the print-outs show. */
public enum Units {
  US,
  METRIC,
  BOTH;

  /** Joins the two texts as this choice asks: {@code 1/2 tsp (2.5 mL)} for both. */
  public String join(String us, String metric) {
    return switch (this) {
      case US -> us;
      case METRIC -> metric;
      case BOTH -> us.equals(metric) ? us : us + " (" + metric + ")";
    };
  }

  /** The word that a plan uses. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
