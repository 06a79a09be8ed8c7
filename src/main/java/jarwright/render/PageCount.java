package jarwright.render;

/**
 * Where a side stands among its section's.
 *
 * @param page from 1
 * @param pages how many there are
 */
record PageCount(int page, int pages) {
  /** Stands in while heights are measured before the count is known. */
  static final PageCount UNKNOWN = new PageCount(88, 88);
}
