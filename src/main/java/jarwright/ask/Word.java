package jarwright.ask;

import java.util.Set;

/**
 * A word of what was said.
 *
 * @param written in small letters, without accents
 * @param raw its stem in every language
 * @param stems the same, marked where the word before it turns it round; what names are compared by
 * @param empty whether it says nothing of the food
 */
record Word(String written, Set<String> raw, Set<String> stems, boolean empty) {}
