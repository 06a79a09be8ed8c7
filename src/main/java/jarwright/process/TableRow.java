package jarwright.process;

import java.util.Optional;

/**
 * One printed cell of a process table with all that it holds for.
 *
 * @param process what the cell prescribes; empty where the table closes the setting in words
 * @param note remark of the transcription, may be empty
 */
public record TableRow(
    String productId,
    Method method,
    Pack pack,
    JarSize jar,
    AltitudeBand band,
    Optional<TestedProcess> process,
    Source source,
    String note) {}
