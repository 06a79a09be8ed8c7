package jarwright.render;

import jarwright.page.DoesNotFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Lays blocks into the frames of a section's sides, one after the other. */
final class Flow implements Consumer<Block> {

  /**
   * A place for blocks on a side; lengths in pt.
   *
   * @param side empty where blocks are only measured
   */
  record Frame(Optional<Side> side, double x, double top, double width, double bottom) {
    double tall() {
      return bottom - top;
    }
  }

  /** Gives the frames of a section in turn. */
  interface Frames {
    /** The next frame: the next column, or the first of a new side. */
    Frame next();

    /** The first frame of a new side, of a new sheet if asked. */
    Frame newSide(boolean sheet);
  }

  private final Frames frames;
  private final List<Block> waiting = new ArrayList<>();
  private Frame frame;
  private double y;
  private double lastAfter;
  private boolean empty = true;

  Flow(Frames frames) {
    this.frames = frames;
  }

  @Override
  public void accept(Block block) {
    if (block instanceof Break end) {
      place();
      begin(frames.newSide(end.sheet()));
      return;
    }
    waiting.add(block);
    if (!block.keepsWithNext()) {
      place();
    }
  }

  /** Places what still waits, and gives the section at least one side. */
  void finish() {
    place();
    if (frame == null) {
      begin(frames.next());
    }
  }

  private void begin(Frame next) {
    frame = next;
    y = next.top();
    lastAfter = 0;
    empty = true;
  }

  private double gap(Block block) {
    return empty ? 0 : Math.max(lastAfter, block.before());
  }

  private double room() {
    return frame.bottom() - y;
  }

  /** Places the waiting blocks together if any frame is high enough, else one by one. */
  private void place() {
    if (waiting.isEmpty()) {
      return;
    }
    if (frame == null) {
      begin(frames.next());
    }
    List<Block> chain = List.copyOf(waiting);
    waiting.clear();
    if (!fits(chain) && !empty && !endsDivisible(chain) && tall(chain) <= fullFrame(chain)) {
      nextFrame(chain.get(0));
    }
    chain.forEach(this::place);
  }

  private boolean fits(List<Block> chain) {
    return gap(chain.get(0)) + tall(chain) <= room() + 0.01;
  }

  private double fullFrame(List<Block> chain) {
    Block head = chain.get(0).repeated();
    return frame.tall() - (head == null ? 0 : head.height(frame.width()));
  }

  /** Whether all but the last block fit here, and of the last at least its first lines. */
  private boolean endsDivisible(List<Block> chain) {
    Block last = chain.get(chain.size() - 1);
    double used = gap(chain.get(0));
    if (chain.size() > 1) {
      List<Block> others = chain.subList(0, chain.size() - 1);
      used += tall(others) + Math.max(others.get(others.size() - 1).after(), last.before());
    }
    return room() > used && !last.split(frame.width(), room() - used).isEmpty();
  }

  private double tall(List<Block> chain) {
    double tall = 0;
    for (int i = 0; i < chain.size(); i++) {
      Block block = chain.get(i);
      tall += i == 0 ? 0 : Math.max(chain.get(i - 1).after(), block.before());
      tall += block.height(frame.width());
    }
    return tall;
  }

  private void nextFrame(Block first) {
    begin(frames.next());
    Block head = first.repeated();
    if (head != null) {
      double top = y;
      Frame here = frame;
      here.side().ifPresent(s -> s.artifact(() -> head.paint(s, here.x(), top, here.width())));
      y += head.height(frame.width());
      // the head alone does not count: a row that is too high must be told, not pushed on for ever
    }
  }

  private void place(Block block) {
    double tall = block.height(frame.width());
    if (gap(block) + tall <= room() + 0.01) {
      paint(block, tall);
      return;
    }
    List<Block> halves = block.split(frame.width(), room() - gap(block));
    if (!halves.isEmpty()) {
      paint(halves.get(0), halves.get(0).height(frame.width()));
      nextFrame(halves.get(1));
      place(halves.get(1));
    } else if (!empty) {
      nextFrame(block);
      place(block);
    } else {
      throw new DoesNotFit(block.at().where(), Units.mm(tall), Units.mm(room()));
    }
  }

  private void paint(Block block, double tall) {
    y += gap(block);
    double top = y;
    Frame here = frame;
    here.side().ifPresent(s -> block.paint(s, here.x(), top, here.width()));
    y += tall;
    lastAfter = block.after();
    empty = false;
  }
}
