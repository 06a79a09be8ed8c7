package jarwright.day;

import jarwright.process.Pack;
import jarwright.process.PreparationStep;
import jarwright.process.PreparationStep.Kind;
import jarwright.process.PreparationStep.Stage;
import jarwright.quantity.TimeSpan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What of a product's steps is worked by hand, stands on the fire, and passes by itself. Steps that
 * belong to a way of working that is not always taken are left out.
 *
 * @param ahead on days before; empty where nothing has to wait from one day to the next
 * @param produce on the canning day, up to the cooking
 * @param cook from the cooking to hot food; for raw pack, to hot liquid
 */
record Making(List<Piece> ahead, List<Piece> produce, List<Piece> cook) {
  /** Minutes below which food on the fire is part of the hand work beside it. */
  private static final int SHORT = 15;

  /** Minutes from which a wait is a soak: all of the batch waits together, and not too long. */
  private static final int SOAK = 60;

  Making {
    ahead = List.copyOf(ahead);
    produce = List.copyOf(produce);
    cook = List.copyOf(cook);
  }

  /**
   * A part of it in working order.
   *
   * @param steps how many of the product's steps it stands for
   * @param least minutes that are printed for it; 0 for hands, whose time is an estimate
   * @param place of the waiting step among all steps of the product; -1 for other pieces
   */
  record Piece(Sort sort, int steps, int least, int most, int place, boolean published) {
    boolean isSoak() {
      return sort == Sort.WAIT && most >= SOAK;
    }

    private Piece and(Piece next) {
      return new Piece(
          sort, steps + next.steps, least + next.least, most + next.most, place, published);
    }
  }

  /** What a piece is. */
  enum Sort {
    HANDS,
    FIRE,
    WAIT
  }

  /**
   * Takes a product's steps apart.
   *
   * @param steps of the product, for all its packs
   */
  static Making of(List<PreparationStep> steps, Pack pack) {
    List<Piece> ahead = pieces(steps, pack, Stage.DAY_BEFORE);
    // What follows the last wait is done while it runs; without a wait nothing is to be planned.
    int last = -1;
    for (int i = 0; i < ahead.size(); i++) {
      last = ahead.get(i).sort() == Sort.WAIT ? i : last;
    }
    return new Making(
        ahead.subList(0, last + 1),
        pieces(steps, pack, Stage.PRODUCE),
        cooking(pieces(steps, pack, Stage.COOK)));
  }

  /** Whether the whole batch soaks, brines or ferments together. */
  boolean hasSoak() {
    return !ahead.isEmpty() || produce.stream().anyMatch(Piece::isSoak);
  }

  /** Whether the last wait of the canning day's preparing is a soak, which ends when it is time. */
  boolean soaksLast() {
    return lastWait() >= 0 && produce.get(lastWait()).isSoak();
  }

  /** Most minutes by which that soak may be longer than its shortest. */
  int leeway() {
    Piece last = produce.get(lastWait());
    return last.most() - last.least();
  }

  /** Whether food that is packed raw stands in its liquid once more on the canning day. */
  boolean standsAgain() {
    return cook.stream().anyMatch(Piece::isSoak);
  }

  private int lastWait() {
    int last = -1;
    for (int i = 0; i < produce.size(); i++) {
      last = produce.get(i).sort() == Sort.WAIT ? i : last;
    }
    return last;
  }

  private static List<Piece> pieces(List<PreparationStep> steps, Pack pack, Stage stage) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      PreparationStep step = steps.get(i);
      if (step.stage() == stage && step.isFor(pack) && step.isUsual()) {
        add(pieces, piece(step, i));
      }
    }
    return pieces;
  }

  private static void add(List<Piece> pieces, Piece next) {
    int last = pieces.size() - 1;
    if (last >= 0 && next.sort() != Sort.WAIT && pieces.get(last).sort() == next.sort()) {
      pieces.set(last, pieces.get(last).and(next));
    } else {
      pieces.add(next);
    }
  }

  private static Piece piece(PreparationStep step, int place) {
    Optional<PreparationStep.Wait> wait = step.waiting().filter(PreparationStep.Wait::stopsWork);
    if (wait.isPresent()) {
      TimeSpan span = wait.get().span();
      return new Piece(
          Sort.WAIT, 1, span.leastMinutes(), span.mostMinutes(), place, wait.get().isPublished());
    }
    int least = step.text().times().stream().mapToInt(TimeSpan::leastMinutes).sum();
    int most = step.text().times().stream().mapToInt(TimeSpan::mostMinutes).sum();
    boolean fire = step.kind() == Kind.COOK && (most >= SHORT || step.stage() == Stage.COOK);
    return fire && most > 0
        ? new Piece(Sort.FIRE, 1, least, most, -1, true)
        : new Piece(Sort.HANDS, 1, 0, 0, -1, false);
  }

  /** At the stove hands and fire are one: the food is on it all the time, but for its waits. */
  private static List<Piece> cooking(List<Piece> pieces) {
    List<Piece> joined = new ArrayList<>();
    for (Piece piece : pieces) {
      Piece one =
          piece.sort() == Sort.WAIT
              ? piece
              : new Piece(Sort.FIRE, piece.steps(), piece.least(), piece.most(), -1, true);
      add(joined, one);
    }
    return joined;
  }
}
