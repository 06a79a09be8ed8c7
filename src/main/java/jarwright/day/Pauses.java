package jarwright.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Cuts a section that is too long to keep in mind into parts of like length. */
final class Pauses {
  /** Items between two pauses: common practice for checklists. */
  static final int MOST_STEPS = 9;

  /** How far a cut may move to stand after time has run, where there is a pause anyway. */
  private static final int LEEWAY = 2;

  private Pauses() {}

  static List<Section> cut(Section section, StepWords words) {
    List<Step> steps = section.steps();
    int count = (steps.size() + MOST_STEPS - 1) / MOST_STEPS;
    if (count <= 1) {
      return List.of(section);
    }
    List<Section> parts = new ArrayList<>();
    int from = 0;
    for (int part = 1; part <= count; part++) {
      int to = part == count ? steps.size() : end(steps, from, count - part + 1);
      String title =
          words.text("section.part", Map.of("title", section.title(), "n", part, "of", count));
      parts.add(new Section(section.id(), title, steps.subList(from, to)));
      from = to;
    }
    return List.copyOf(parts);
  }

  /** Where the part that begins at {@code from} ends, if so many parts are left. */
  private static int end(List<Step> steps, int from, int parts) {
    int left = steps.size() - from;
    int even = from + (left + parts - 1) / parts;
    for (int off = 0; off <= LEEWAY; off++) {
      for (int end : new int[] {even - off, even + off}) {
        boolean restFits = steps.size() - end <= (parts - 1) * MOST_STEPS;
        boolean fits = end > from + 1 && end - from <= MOST_STEPS && restFits;
        if (fits && steps.get(end - 1) instanceof Step.Wait) {
          return end;
        }
      }
    }
    return even;
  }
}
