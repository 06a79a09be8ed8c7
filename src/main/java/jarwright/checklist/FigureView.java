package jarwright.checklist;

import jarwright.day.Figure;
import java.util.Map;

/** A figure as a template takes it. */
final class FigureView {
  private FigureView() {}

  static Map<String, Object> of(Figure figure) {
    return Map.of("main", figure.main(), "also", figure.also());
  }
}
