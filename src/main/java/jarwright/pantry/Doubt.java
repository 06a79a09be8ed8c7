package jarwright.pantry;

import jarwright.lot.JarId;
import java.time.OffsetDateTime;

/**
 * Why a jar is to be looked at before it is eaten.
 *
 * @param cause the spoiled jar of the same lot
 * @param seen the sign of spoilage in it
 */
public record Doubt(JarId cause, OffsetDateTime since, String seen) {}
