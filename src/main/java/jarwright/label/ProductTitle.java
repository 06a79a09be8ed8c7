package jarwright.label;

/**
 * A product's name cut where the tables' names can be cut, so that its first words can stand large:
 * {@code Tomatoes | whole or halved | in water}.
 *
 * @param title what is in the jar, never left out
 * @param rest how it was prepared, without the comma before it; may be empty
 * @param note what stood in brackets, without them; may be empty
 */
record ProductTitle(String title, String rest, String note) {
  private static final String COMMA = ", ";

  static ProductTitle of(String name) {
    String plain = name.strip();
    String note = "";
    int open = plain.indexOf(" (");
    int close = plain.indexOf(')', Math.max(open, 0));
    if (open > 0 && close > 0) {
      note = plain.substring(open + 2, close);
      plain = plain.substring(0, open) + plain.substring(close + 1);
    }
    int comma = plain.indexOf(COMMA);
    return comma < 1
        ? new ProductTitle(plain, "", note)
        : new ProductTitle(plain.substring(0, comma), plain.substring(comma + 2), note);
  }
}
