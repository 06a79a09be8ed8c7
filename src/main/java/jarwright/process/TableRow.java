package jarwright.process;

import java.util.Optional;

/**
 * One printed cell of a process table with all that it holds for.
 *
 * @param process what the cell prescribes; empty where the table closes the setting in words
 * @param note remark of the transcription, may be empty; begins with "special canner routine" where
 *     the guide has the canner heated and vented in its own way for this jar
 */
public record TableRow(
    String productId,
    Method method,
    Pack pack,
    JarSize jar,
    AltitudeBand band,
    Optional<TestedProcess> process,
    Source source,
    String note) {
  private static final String OWN_ROUTINE = "special canner routine";

  /** Whether time and canner routine belong together and to this jar alone. */
  boolean isForItsJarAlone() {
    return note.startsWith(OWN_ROUTINE);
  }
}
