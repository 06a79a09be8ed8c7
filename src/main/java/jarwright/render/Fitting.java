package jarwright.render;

import jarwright.page.DoesNotFit;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the largest size at which words go into a box.
 *
 * @param at their element, for messages
 * @param size the largest size in pt
 * @param least the smallest size
 * @param dropBelow a size below which parts are dropped rather than all set smaller
 * @param wraps whether a part may take several lines
 * @param along the room in the direction of the lines, in pt
 * @param across the room for lines, in pt
 */
record Fitting(
    Element at,
    double size,
    double least,
    double dropBelow,
    boolean wraps,
    double along,
    double across) {
  private static final double STEP = 0.25;

  /** Words are divided only when keeping them whole would cost more than a fifth of the size. */
  private static final double WHOLE_WORDS = 0.8;

  /**
   * Words on lines of their own.
   *
   * @param place among all parts, from 0
   * @param drop the highest is left out first, 0 never
   */
  record Part(int place, Galley galley, Style style, int drop) {
    /** The scale at which it is set when the whole is set at {@code scale}: never below 6 pt. */
    double scale(double scale) {
      return Math.max(scale, Element.LEAST_SIZE / style.size());
    }
  }

  /** A part in lines, everything to be multiplied by {@code scale}. */
  record Setting(Part part, List<Line> lines, double scale) {
    double tall() {
      double tall = 0;
      for (Line line : lines) {
        double[] reach = part.galley().reach(line);
        tall += (reach[0] + reach[1]) * scale;
      }
      return tall;
    }
  }

  /** The parts that stay, as they are set, and their height. */
  record Fitted(List<Setting> parts, double scale, double tall) {
    /** The same lines for other words of the same widths. */
    Fitted with(List<Part> others) {
      List<Setting> set = new ArrayList<>();
      for (Setting old : parts) {
        set.add(new Setting(others.get(old.part().place()), old.lines(), old.scale()));
      }
      return new Fitted(set, scale, tall);
    }
  }

  /**
   * The parts, as many as can stay.
   *
   * @throws DoesNotFit if those that must stay are too large at the smallest size
   */
  Fitted fit(List<Part> parts) {
    List<Part> left = new ArrayList<>(parts);
    while (true) {
      Fitted found = largest(left);
      if (found != null) {
        return found;
      }
      int most = left.stream().mapToInt(Part::drop).max().orElse(0);
      if (most == 0) {
        throw tooLarge(left);
      }
      left.removeIf(part -> part.drop() == most);
    }
  }

  private Fitted largest(List<Part> some) {
    boolean bare = some.stream().allMatch(part -> part.drop() == 0);
    double smallest = (bare ? least : Math.max(least, dropBelow)) / size;
    Fitted whole = search(some, smallest, false);
    if (whole != null && whole.scale() >= WHOLE_WORDS) {
      return whole;
    }
    Fitted divided = search(some, smallest, true);
    boolean saves =
        divided != null && (whole == null || whole.scale() < WHOLE_WORDS * divided.scale());
    return saves ? divided : whole;
  }

  /** The largest scale at which the parts fit, found by halving the range of steps. */
  private Fitted search(List<Part> some, double smallest, boolean divide) {
    int low = 0;
    int high = (int) Math.ceil(size * (1 - smallest) / STEP - 1e-6);
    Fitted best = null;
    while (low <= high) {
      int middle = best == null && low == 0 ? 0 : (low + high) / 2;
      double scale = Math.max(smallest, 1 - middle * STEP / size);
      Fitted found = at(some, scale, divide);
      if (found != null) {
        best = found;
        high = middle - 1;
      } else {
        low = middle + 1;
      }
    }
    return best;
  }

  private Fitted at(List<Part> some, double scale, boolean divide) {
    List<Setting> all = new ArrayList<>();
    double height = 0;
    for (Part part : some) {
      Setting set = set(part, scale, divide);
      if (set == null) {
        return null;
      }
      height += set.tall();
      all.add(set);
    }
    return height <= across + 0.01 ? new Fitted(all, scale, height) : null;
  }

  /** The part in lines, or null if a word or the one line is too wide. */
  private Setting set(Part part, double whole, boolean divide) {
    double scale = part.scale(whole);
    Style style = divide ? part.style() : part.style().whole();
    List<Line> lines = Breaking.lines(part.galley(), style, along / scale, false);
    return lines == null || (!wraps && lines.size() > 1) ? null : new Setting(part, lines, scale);
  }

  private DoesNotFit tooLarge(List<Part> some) {
    double scale = least / size;
    double height = 0;
    for (Part part : some) {
      Setting set = set(part, scale, true);
      if (set == null) {
        Galley galley = part.galley();
        double needs = wraps ? galley.widestWord() : galley.width(0, galley.length());
        return new DoesNotFit(
            at.where() + " " + Markup.shorten(galley.text()),
            Units.mm(needs * part.scale(scale)),
            Units.mm(along));
      }
      height += set.tall();
    }
    String first = some.isEmpty() ? "" : " " + Markup.shorten(some.get(0).galley().text());
    return new DoesNotFit(at.where() + first, Units.mm(height), Units.mm(across));
  }
}
