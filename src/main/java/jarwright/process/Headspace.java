package jarwright.process;

import jarwright.quantity.Length;

/**
 * Room between the food and the rim.
 *
 * @param of what it is measured to: empty for all the content, else {@code solids}, {@code liquid},
 *     {@code small-beans}, {@code large-beans}
 */
public record Headspace(String of, Length depth) {}
