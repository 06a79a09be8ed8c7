package jarwright.render;

import java.util.List;

/** Blocks one below the other that stay together. */
final class Stack implements Block {
  private final Element at;
  private final List<Block> blocks;
  private final boolean keep;

  Stack(Element at, List<Block> blocks, boolean keep) {
    this.at = at;
    this.blocks = List.copyOf(blocks);
    this.keep = keep;
    for (Block block : blocks) {
      if (block instanceof Break) {
        throw block.at().fault("<break> may stand in <body> only, not inside <" + at + ">");
      }
    }
  }

  boolean isEmpty() {
    return blocks.isEmpty();
  }

  /** Whether it is one paragraph, which needs no structure element inside that of its cell. */
  boolean isPlainWords() {
    return blocks.size() == 1 && blocks.get(0) instanceof Paragraph;
  }

  @Override
  public double before() {
    return blocks.isEmpty() ? 0 : blocks.get(0).before();
  }

  @Override
  public double after() {
    return blocks.isEmpty() ? 0 : blocks.get(blocks.size() - 1).after();
  }

  @Override
  public boolean keepsWithNext() {
    return keep;
  }

  @Override
  public Element at() {
    return at;
  }

  @Override
  public double height(double width) {
    double height = 0;
    for (int i = 0; i < blocks.size(); i++) {
      height += gap(i) + blocks.get(i).height(width);
    }
    return height;
  }

  private double gap(int i) {
    return i == 0 ? 0 : Math.max(blocks.get(i - 1).after(), blocks.get(i).before());
  }

  /** From the top to the middle of the first line's capitals; 0 if it does not begin with words. */
  double firstMiddle(double width) {
    return !blocks.isEmpty() && blocks.get(0) instanceof Paragraph words
        ? words.firstMiddle(width)
        : 0;
  }

  /**
   * The width that its words would take on one line, if it is one paragraph; else no width fits.
   */
  double natural() {
    return blocks.size() == 1 && blocks.get(0) instanceof Paragraph words
        ? words.natural()
        : Double.MAX_VALUE;
  }

  @Override
  public void paint(Side side, double x, double top, double width) {
    double y = top;
    for (int i = 0; i < blocks.size(); i++) {
      y += gap(i);
      blocks.get(i).paint(side, x, y, width);
      y += blocks.get(i).height(width);
    }
  }
}
