/**
 * Programs that {@code src/benchmark/run} measures as whole processes: the floor, the larger works, and the
 * sheets that other programs print.
 */
package jarwright.benchmark;
