/**
 * The batch record pages: a page for each lot and jar, and their index, as sheets.
 *
 * <p>Knows neither the other print-outs nor whether a page goes into a file or over the network.
 */
package jarwright.record;
