/**
 * What is wrong with what came in, where, and what would be right.
 *
 * <p>Knows nothing of what is being read.
 */
package jarwright.problem;
