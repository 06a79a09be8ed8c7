/**
 * Exact amounts with their units, as a kitchen writes them, and their text forms.
 *
 * <p>Knows nothing of food, jars or files.
 */
package jarwright.quantity;
