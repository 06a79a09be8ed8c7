package jarwright.pantry;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/** What somebody reports of a jar in their hand, by whatever door, before it is recorded. */
public interface JarReport {

  /** Why it must not be recorded of this jar now, as in {@code is taken}; empty if it may. */
  Optional<String> hindrance(Jar jar, OffsetDateTime when);

  /** What is to be recorded of the jar, in order. */
  List<Happening> happenings(Jar jar);
}
