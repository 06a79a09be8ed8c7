/**
 * The door in: plans, tables, the household folder; and what is written there for other programs.
 *
 * <p>The only user of the YAML, CSV and JSON libraries; decides nothing about food.
 */
package jarwright.files;
