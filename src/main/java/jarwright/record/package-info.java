/**
 * The batch record pages that a phone shows when it scans a jar.
 *
 * <p>Knows nothing of the other print-outs.
 */
package jarwright.record;
