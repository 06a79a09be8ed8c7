package jarwright.render;

/**
 * One line of a galley.
 *
 * @param from its first character
 * @param to one past its last character that shows
 * @param next where the next line begins
 * @param hyphen whether it ends inside a word
 * @param width of what shows, at scale 1
 */
record Line(int from, int to, int next, boolean hyphen, double width) {}
