/**
 * The batch: what a plan asks for, joined with the tested process and worked out to the jar.
 *
 * <p>The one truth that all print-outs show; knows nothing of clocks, files or paper.
 */
package jarwright.batch;
