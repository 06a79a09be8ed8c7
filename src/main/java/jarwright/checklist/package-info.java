/**
 * The checklist print-out: a batch's steps as a sheet to laminate.
 *
 * <p>Knows nothing of the other print-outs.
 */
package jarwright.checklist;
