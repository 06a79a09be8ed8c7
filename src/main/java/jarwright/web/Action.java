package jarwright.web;

import jarwright.pantry.Checked;
import jarwright.pantry.Doubt;
import jarwright.pantry.Jar;
import jarwright.pantry.JarReport;
import jarwright.pantry.JarStep;
import jarwright.pantry.Origin;
import jarwright.pantry.Sign;
import jarwright.pantry.Spoiled;
import jarwright.pantry.Ticked;
import jarwright.pantry.Tossing;
import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What can be recorded of a jar from its page. */
enum Action {
  TAKE("note", false, 200) {
    @Override
    Optional<JarReport> report(String said, Request request) {
      return Optional.of(JarStep.taken(said));
    }
  },
  /** Looked over, every sign answered with yes or no. */
  CHECK("note", false, 200) {
    @Override
    Optional<JarReport> report(String said, Request request) {
      Set<Sign> seen = EnumSet.noneOf(Sign.class);
      for (Sign sign : Sign.values()) {
        String answer = request.field(sign.word());
        if (answer.equals(Ticked.YES.word())) {
          seen.add(sign);
        } else if (!answer.equals(Ticked.NO.word())) {
          return Optional.empty();
        }
      }
      return Optional.of(new Checked(seen, said));
    }
  },
  MOVE("to", true, 80) {
    @Override
    Optional<JarReport> report(String said, Request request) {
      return Optional.of(JarStep.moved(said));
    }
  },
  TOSS("why", true, 200) {
    @Override
    Optional<JarReport> report(String said, Request request) {
      Set<Sign> seen = ticked(request);
      // Nothing ticked is not the same as told that nothing was seen.
      return Optional.of(new Tossing(said, seen.isEmpty() ? Optional.empty() : Optional.of(seen)));
    }
  },
  FOUND("to", false, 80) {
    @Override
    Optional<JarReport> report(String said, Request request) {
      return Optional.of(JarStep.found(said));
    }
  },
  /** Found spoiled, at the table or long after it was thrown away. */
  SPOILED("seen", false, 200) {
    @Override
    Optional<JarReport> report(String said, Request request) {
      Set<Sign> seen = ticked(request);
      return seen.isEmpty() && said.isEmpty()
          ? Optional.empty()
          : Optional.of(new Spoiled(seen, said, ""));
    }
  },
  /** Somebody gives their word for the lot; recorded by the household, not as a report. */
  VOUCH("who", true, 80) {
    @Override
    Optional<JarReport> report(String said, Request request) {
      return Optional.empty();
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

  /** As addresses end in them. */
  static List<String> names() {
    return Stream.of(values()).map(Action::name).toList();
  }

  abstract Optional<JarReport> report(String said, Request request);

  private static Set<Sign> ticked(Request request) {
    Set<Sign> seen = EnumSet.noneOf(Sign.class);
    for (Sign sign : Sign.values()) {
      if (request.field(sign.word()).equals(Ticked.YES.word())) {
        seen.add(sign);
      }
    }
    return seen;
  }

  /** The report that a form gives; empty where what it needs is missing or too long. */
  Optional<JarReport> report(Request request) {
    return said(request).flatMap(said -> report(said, request));
  }

  /** What its field says; empty where that is missing or too long. */
  Optional<String> said(Request request) {
    String said = request.field(field);
    boolean fits = said.length() <= longest && !(needed && said.isEmpty());
    return fits ? Optional.of(said) : Optional.empty();
  }

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What can happen to a jar as it stands, the likeliest first. */
  static List<Action> possible(Jar jar, OffsetDateTime now) {
    return Stream.of(values()).filter(a -> a.isPossible(jar, now)).toList();
  }

  private boolean isPossible(Jar jar, OffsetDateTime now) {
    return switch (this) {
      case TAKE -> JarStep.taken("x").hindrance(jar, now).isEmpty();
      case CHECK ->
          jar.doubt().filter(d -> d.kind() == Doubt.Kind.TO_CHECK).isPresent()
              && new Checked(Set.of(), "").hindrance(jar, now).isEmpty();
      case MOVE -> JarStep.moved("x").hindrance(jar, now).isEmpty();
      case TOSS -> JarStep.tossed("x").hindrance(jar, now).isEmpty();
      case FOUND -> JarStep.found("x").hindrance(jar, now).isEmpty();
      case SPOILED -> new Spoiled("x").hindrance(jar, now).isEmpty();
      case VOUCH -> jar.standing().isHere() && jar.origin() instanceof Origin.Unvouched;
    };
  }
}
