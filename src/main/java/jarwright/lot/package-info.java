/**
 * Names of batches and jars as they stand on labels and in QR codes, and their use-by dates.
 *
 * <p>Knows nothing of what is in the jars.
 */
package jarwright.lot;
