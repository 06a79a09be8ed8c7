/**
 * The inventory sheet: what stands where, what to use first.
 *
 * <p>Knows nothing of the other print-outs.
 */
package jarwright.shelf;
