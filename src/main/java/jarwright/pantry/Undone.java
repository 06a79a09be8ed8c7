package jarwright.pantry;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
   * Why an event cannot be taken back now; empty if it can. What builds on it has to be taken back
   * first.
   *
   * @param events the whole ledger, in order
   */
  public static Optional<String> hindrance(long number, List<LedgerEvent> events) {
    Set<Long> undone = numbers(events);
    Optional<LedgerEvent> wanted = events.stream().filter(e -> e.number() == number).findFirst();
    if (wanted.isEmpty()) {
      return Optional.of("there is no event " + number);
    }
    if (wanted.get().what() instanceof Opened) {
      return Optional.of("event " + number + " opens the ledger");
    }
    if (undone.contains(number)) {
      return Optional.of("event " + number + " is undone already");
    }
    LedgerEvent subject = subject(wanted.get(), events);
    return events.stream()
        .filter(e -> e.number() > number && !undone.contains(e.number()))
        // An undo of something later leaves things as they were.
        .filter(e -> !(e.what() instanceof Undone undo) || undo.event() < number)
        .filter(e -> concernsTheSame(subject(e, events), subject))
        .reduce((first, second) -> second)
        .map(e -> "event " + e.number() + " came after it; undo that first");
  }

  /** The event that is spoken of in the end: that of an undo is what it takes back. */
  private static LedgerEvent subject(LedgerEvent event, List<LedgerEvent> events) {
    LedgerEvent subject = event;
    while (subject.what() instanceof Undone undo && undo.event() < subject.number()) {
      Optional<LedgerEvent> target =
          events.stream().filter(e -> e.number() == undo.event()).findFirst();
      if (target.isEmpty()) {
        return subject;
      }
      subject = target.get();
    }
    return subject;
  }

  /** The last event that is neither taken back nor takes one back; empty where there is none. */
  public static Optional<LedgerEvent> last(List<LedgerEvent> events) {
    Set<Long> undone = numbers(events);
    return events.stream()
        .filter(e -> !(e.what() instanceof Undone || e.what() instanceof Opened))
        .filter(e -> !undone.contains(e.number()))
        .reduce((first, second) -> second);
  }

  private static boolean concernsTheSame(LedgerEvent later, LedgerEvent earlier) {
    boolean sameJars =
        later.jars().isEmpty()
            || earlier.jars().isEmpty()
            || needsWhy(earlier.what())
            || needsWhy(later.what())
            || !later.jars().in(earlier.jars()).isEmpty();
    return later.lot().equals(earlier.lot()) && sameJars;
  }

  /**
   * The numbers of all events that are taken back.
   *
   * @param events those of this kind, in order; others are passed over
   */
  public static Set<Long> numbers(List<LedgerEvent> events) {
    return byNumber(events).keySet();
  }

  /**
   * What takes each event back that is taken back. An undo can itself be undone, so the later one
   * is asked first.
   */
  static Map<Long, LedgerEvent> byNumber(List<LedgerEvent> events) {
    Map<Long, LedgerEvent> undone = new HashMap<>();
    for (int i = events.size() - 1; i >= 0; i--) {
      LedgerEvent event = events.get(i);
      if (event.what() instanceof Undone undo
          && !undone.containsKey(event.number())
          && undo.event() < event.number()) {
        undone.putIfAbsent(undo.event(), event);
      }
    }
    return undone;
  }

  /** Whether to take it back lifts a doubt, so that it is not done without a reason. */
  public static boolean needsWhy(Happening what) {
    return what instanceof Spoiled || (what instanceof Checked checked && !checked.isClean());
  }
}
