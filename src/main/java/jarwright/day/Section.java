package jarwright.day;

import java.util.List;

/**
 * The steps between two natural pauses.
 *
 * @param id names the section in the words and templates: {@code ahead}, {@code before}, {@code
 *     jars}, {@code produce}, {@code fill}, {@code canner}, {@code clock}, {@code out}, {@code
 *     next-day}, {@code optional}; parts of a long one share it
 * @param title as printed
 */
public record Section(String id, String title, List<Step> steps) {
  public Section {
    steps = List.copyOf(steps);
  }
}
