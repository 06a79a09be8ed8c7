package jarwright.render;

import java.util.List;

/** Something that takes a piece of a column from side to side. Lengths are in pt. */
interface Block {

  /** The room it wants above; between two blocks the larger wish counts. */
  default double before() {
    return 0;
  }

  /** The room it wants below. */
  default double after() {
    return 0;
  }

  /** Whether the block after this one must stand on the same side of paper. */
  default boolean keepsWithNext() {
    return false;
  }

  /**
   * Its height at that width.
   *
   * @throws jarwright.page.DoesNotFit if it cannot be that narrow
   */
  double height(double width);

  void paint(Side side, double x, double top, double width);

  /**
   * This block as two, the first no taller than {@code room}; empty if it cannot be divided there.
   */
  default List<Block> split(double width, double room) {
    return List.of();
  }

  /** What is repeated at the top of a new side before this block, as a table's head; or null. */
  default Block repeated() {
    return null;
  }

  /** Where it stands in the template, for messages. */
  Element at();
}
