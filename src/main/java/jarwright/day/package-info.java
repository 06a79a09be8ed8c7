/**
 * The working day: the steps of a batch in order, its canner loads, people, burners and clock.
 *
 * <p>Estimates live here and are marked as such; a process time is only ever passed through.
 */
package jarwright.day;
