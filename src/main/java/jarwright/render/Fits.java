package jarwright.render;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lines already found for words in boxes, found again for words that differ in nothing but digits
 * of the same width, as the numbers of a thousand jars do.
 */
final class Fits {
  private static final int MOST = 1_000;

  private final Map<String, Fitting.Fitted> known = new HashMap<>();

  /** The parts as {@link Fitting#fit} sets them. */
  Fitting.Fitted fit(Fitting fitting, List<Fitting.Part> parts) {
    String look = look(fitting, parts);
    Fitting.Fitted before = known.get(look);
    if (before != null) {
      return before.with(parts);
    }
    Fitting.Fitted found = fitting.fit(parts);
    if (known.size() == MOST) {
      known.clear();
    }
    known.put(look, found);
    return found;
  }

  /** All that the lines hang on. */
  private static String look(Fitting fitting, List<Fitting.Part> parts) {
    StringBuilder look = new StringBuilder(400);
    for (double number :
        new double[] {
          fitting.size(), fitting.least(), fitting.dropBelow(), fitting.along(), fitting.across()
        }) {
      look.append(Double.doubleToLongBits(number)).append(' ');
    }
    look.append(fitting.wraps());
    for (Fitting.Part part : parts) {
      Style style = part.style();
      look.append('\n').append(part.drop()).append(' ').append(style.size());
      look.append(' ').append(style.hyphenate());
      part.galley().look(look);
    }
    return look.toString();
  }
}
