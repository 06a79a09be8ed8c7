package jarwright.page;

import java.util.Arrays;
import java.util.Locale;

/** The outline of one label. */
public enum LabelShape {
  /** Straight sides, corners rounded. */
  ROUNDED_RECT,
  /** Straight sides, square corners. */
  RECT,
  /** A disc; width and height are its diameter. */
  CIRCLE,
  /** A long band that goes round the jar. */
  STRIP;

  /** The word written in stock files and templates, as {@code rounded-rect}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The shape of that word.
   *
   * @throws IllegalArgumentException naming the shapes there are
   */
  public static LabelShape parse(String text) {
    return Arrays.stream(values())
        .filter(s -> s.word().equals(text.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "label shape \"" + text + "\"; there are rounded-rect, rect, circle, strip"));
  }
}
