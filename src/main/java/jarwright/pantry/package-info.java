/**
 * What became of the jars: the ledger's events, the stock they add up to, verdicts, tracing.
 *
 * <p>Everything is the fold of events; knows nothing of files, clocks or how a ledger is kept.
 */
package jarwright.pantry;
