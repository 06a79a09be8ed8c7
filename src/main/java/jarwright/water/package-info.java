/**
 * Water and heat: boiling points, how many jars stand in a canner, how much water goes in, how long
 * it takes to heat.
 *
 * <p>Computes in double, for nothing here touches a process time; knows nothing of batches.
 */
package jarwright.water;
