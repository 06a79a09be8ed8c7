/**
 * What the household wrote: its kitchen, its canners, the batches it wants.
 *
 * <p>Checked for form and sense, but decides nothing: no process, no dose.
 */
package jarwright.plan;
