/**
 * Jar labels and the page that brings a printer into register with their stock, as sheets.
 *
 * <p>Knows nothing of the other print-outs, nor of how a sheet is drawn.
 */
package jarwright.label;
