package jarwright.day;

import jarwright.batch.Batch;
import jarwright.day.Making.Piece;
import jarwright.day.Making.Sort;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Plans the work of days before back from the canning day. No wait is shorter or longer than its
 * step prints; within that, hands are wanted by day.
 */
final class AheadPlanner {
  /** Minutes from which a wait is a ferment: it has the longest time, not the shortest. */
  private static final int FERMENT = 7 * 24 * 60;

  private final Batch batch;
  private final List<Piece> pieces;
  private final List<Minutes> minutes;

  /**
   * @param minutes of each piece
   */
  AheadPlanner(Batch batch, List<Piece> pieces, List<Minutes> minutes) {
    this.batch = batch;
    this.pieces = List.copyOf(pieces);
    this.minutes = List.copyOf(minutes);
  }

  /**
   * The work ahead, earliest first.
   *
   * @param wanted when the canning day takes the food up
   */
  List<Ahead> before(ZonedDateTime wanted) {
    List<Ahead> found = new ArrayList<>();
    ZonedDateTime until = wanted;
    for (int i = pieces.size() - 1; i >= 0; ) {
      Piece wait = pieces.get(i);
      int work = 0;
      int first = i;
      while (first > 0 && pieces.get(first - 1).sort() != Sort.WAIT) {
        first--;
        work += minutes.get(first).planned();
      }
      Ahead one = begin(wait, work, until);
      found.add(0, one);
      until = one.start();
      i = first - 1;
    }
    return found;
  }

  private Ahead begin(Piece wait, int work, ZonedDateTime until) {
    boolean ferments = wait.most() >= FERMENT;
    int preferred = ferments ? wait.most() : wait.least();
    for (int off = 0; off <= wait.most() - wait.least(); off++) {
      Ahead one = ahead(wait, work, until, ferments ? preferred - off : preferred + off);
      if (!one.isAtNight()) {
        return one;
      }
    }
    return ahead(wait, work, until, preferred);
  }

  private Ahead ahead(Piece wait, int work, ZonedDateTime until, int length) {
    ZonedDateTime waits = until.minusMinutes(length);
    return new Ahead(batch.lot(), waits.minusMinutes(work), waits, until, wait.place());
  }
}
