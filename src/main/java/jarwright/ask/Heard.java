package jarwright.ask;

/**
 * Somebody's words, understood.
 *
 * @param food what they mean as a food or a way of canning
 * @param said pack, jar, method and the like that they name beside
 * @param language tag of the language that they are in, as far as can be told; else English
 */
public record Heard(Meaning food, Said said, String language) {}
