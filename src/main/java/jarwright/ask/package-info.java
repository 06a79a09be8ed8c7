/**
 * What people ask for in their own words: which tested product it is, or why there is none.
 *
 * <p>Knows words, no minutes: what is found here is looked up in the tables afterwards.
 */
package jarwright.ask;
