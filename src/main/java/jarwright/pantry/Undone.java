package jarwright.pantry;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** An earlier event is taken back: all is as if it had not happened. */
public record Undone(long event, String why) implements Happening {
  public static final String KIND = "undone";

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public Detail detail() {
    return Detail.of("of", event).with("why", why);
  }

  static Undone from(Detail detail) {
    return new Undone(detail.need("of", Long::valueOf), detail.text("why"));
  }

  /**
   * The numbers of all events that are taken back. An undo can itself be undone, so the later one
   * is asked first.
   *
   * @param events those of this kind, in order; others are passed over
   */
  static Set<Long> numbers(List<LedgerEvent> events) {
    Set<Long> undone = new HashSet<>();
    for (int i = events.size() - 1; i >= 0; i--) {
      LedgerEvent event = events.get(i);
      if (event.what() instanceof Undone undo
          && !undone.contains(event.number())
          && undo.event() < event.number()) {
        undone.add(undo.event());
      }
    }
    return undone;
  }
}
