package jarwright.web;

import jarwright.pantry.Jar;
import jarwright.pantry.JarStep;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What can be recorded of a jar from its page. */
enum Action {
  TAKE("note", false, 200) {
    @Override
    JarStep step(String said) {
      return JarStep.taken(said);
    }
  },
  MOVE("to", true, 80) {
    @Override
    JarStep step(String said) {
      return JarStep.moved(said);
    }
  },
  TOSS("why", true, 200) {
    @Override
    JarStep step(String said) {
      return JarStep.tossed(said);
    }
  },
  FOUND("to", false, 80) {
    @Override
    JarStep step(String said) {
      return JarStep.found(said);
    }
  };

  private final String field;
  private final boolean needed;
  private final int longest;

  Action(String field, boolean needed, int longest) {
    this.field = field;
    this.needed = needed;
    this.longest = longest;
  }

  abstract JarStep step(String said);

  /** The step that a form asks for; empty where what it needs is missing or too long. */
  Optional<JarStep> step(Request request) {
    String said = request.field(field);
    boolean fits = said.length() <= longest && !(needed && said.isEmpty());
    return fits ? Optional.of(step(said)) : Optional.empty();
  }

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * What can happen to a jar as it stands, the likeliest first. A jar in doubt is not offered to be
   * taken: that asks for a look at it, which a tap on a phone is not.
   */
  static List<Action> possible(Jar jar, OffsetDateTime now) {
    Stream<Action> offered = jar.doubt().isPresent() ? Stream.of(TOSS, MOVE) : Stream.of(values());
    return offered.filter(a -> a.step("x").hindrance(jar, now).isEmpty()).toList();
  }
}
