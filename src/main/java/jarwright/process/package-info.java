/**
 * The tested processes as published: products, packs, jars, methods, altitude bands, times.
 *
 * <p>Knows nothing of anybody's plan or kitchen, and computes no process of its own.
 */
package jarwright.process;
