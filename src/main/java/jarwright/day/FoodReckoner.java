package jarwright.day;

import jarwright.batch.Batch;
import jarwright.day.Cookings.Manner;
import jarwright.day.LoadTasks.Part;
import jarwright.day.Making.Piece;
import jarwright.day.Making.Sort;
import jarwright.day.TaskTimes.Amount;
import jarwright.quantity.Fraction;
import jarwright.water.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Works out how long a batch's food takes: by hand, on the fire, and standing by itself. */
final class FoodReckoner {
  /** Common practice: produce for a quart where the guide prints no weight. */
  private static final Fraction POUNDS_A_QUART = Fraction.of(5, 2);

  /** Minutes up to which a pot stays where it is while its food stands in it. */
  private static final int STAYS_ON = 60;

  /** After a wait, work of so few steps is draining and covering again, not preparing. */
  private static final int TENDING = 2;

  /** Steps that one figure for tending stands for. */
  private static final int STEPS_TENDED = 3;

  private final TaskTimes times;
  private final Batch batch;
  private final Making making;
  private final int hands;
  private final int fillers;

  /**
   * @param fillers pairs of hands that the batch has; one of them is at the stove while others wash
   *     and prepare
   */
  FoodReckoner(TaskTimes times, Batch batch, Making making, int fillers) {
    this.times = times;
    this.batch = batch;
    this.making = making;
    this.hands = Math.max(1, fillers - 1);
    this.fillers = fillers;
  }

  /** What comes before the food is needed, for a share of the batch; nothing for no share. */
  List<Part> preparing(Fraction share) {
    List<Part> parts = new ArrayList<>();
    if (share.signum() == 0) {
      return parts;
    }
    if (making.ahead().isEmpty() && making.produce().isEmpty()) {
      parts.add(hand(TaskKind.WASH, share));
      parts.add(hand(TaskKind.PREPARE, share));
    }
    boolean washed = making.ahead().stream().anyMatch(p -> p.sort() == Sort.HANDS);
    boolean waited = !making.ahead().isEmpty();
    for (Piece piece : making.produce()) {
      if (piece.sort() == Sort.WAIT) {
        parts.add(waiting(piece, 0));
      } else if (piece.sort() == Sort.FIRE) {
        parts.add(new Part(TaskKind.PRECOOK, printed(piece), 0, 1));
      } else if (waited && piece.steps() <= TENDING) {
        parts.add(tending(piece));
      } else {
        if (!washed) {
          parts.add(hand(TaskKind.WASH, share));
        }
        washed = true;
        parts.add(prepared(piece, share));
      }
      waited |= piece.sort() == Sort.WAIT;
    }
    return parts;
  }

  /** The work ahead of the canning day, with the minutes of each piece. */
  List<Minutes> ahead() {
    List<Minutes> all = new ArrayList<>();
    boolean waited = false;
    for (Piece piece : making.ahead()) {
      if (piece.sort() != Sort.HANDS) {
        all.add(printed(piece));
      } else if (waited) {
        all.add(tending(piece).minutes());
      } else {
        Estimate work = estimate(TaskKind.PREPARE, Fraction.ONE);
        Estimate washing = estimate(TaskKind.WASH, Fraction.ONE);
        all.add(new Minutes.Guess(part(work, piece.steps(), steps()).plus(washing)));
      }
      waited |= piece.sort() == Sort.WAIT;
    }
    return all;
  }

  /** How many steps the preparing by hand is shared out over. */
  private int steps() {
    int steps = 0;
    boolean waited = false;
    for (Piece piece : making.ahead()) {
      steps += piece.sort() == Sort.HANDS && !waited ? piece.steps() : 0;
      waited |= piece.sort() == Sort.WAIT;
    }
    for (Piece piece : making.produce()) {
      boolean tended = waited && piece.steps() <= TENDING;
      steps += piece.sort() == Sort.HANDS && !tended ? piece.steps() : 0;
      waited |= piece.sort() == Sort.WAIT;
    }
    return steps;
  }

  private Part prepared(Piece piece, Fraction share) {
    Part all = hand(TaskKind.PREPARE, share);
    Estimate part = part(estimate(TaskKind.PREPARE, share), piece.steps(), steps());
    return new Part(all.kind(), new Minutes.Guess(part), all.hands(), all.pots());
  }

  private Part tending(Piece piece) {
    Part one = hand(TaskKind.TEND, Fraction.ONE);
    Estimate each = estimate(TaskKind.TEND, Fraction.ONE);
    int times = (piece.steps() + STEPS_TENDED - 1) / STEPS_TENDED;
    Estimate all = new Estimate(times * each.min(), times * each.max());
    return new Part(one.kind(), new Minutes.Guess(all), one.hands(), one.pots());
  }

  private static Estimate part(Estimate all, int steps, int of) {
    return new Estimate(share(all.min(), steps, of), share(all.max(), steps, of));
  }

  private static int share(int minutes, int steps, int of) {
    return Fraction.of((long) minutes * steps, of).ceiling().intValueExact();
  }

  /**
   * So many goes of cooking, one after the other.
   *
   * @param first whether what all recipes share, as a juice, is made here
   */
  List<Part> cooking(Cookings cookings, int goes, boolean first, CannerLoad load) {
    List<Part> parts = new ArrayList<>();
    List<Piece> pieces = making.cook();
    int shared = 0;
    for (int i = 0; cookings.manner() == Manner.RECIPES && i < pieces.size(); i++) {
      shared = pieces.get(i).sort() == Sort.WAIT ? i + 1 : shared;
    }
    Amount amount = amount(cookings, load);
    if (first && goes > 0) {
      parts.addAll(cooked(pieces.subList(0, shared), amount, cookings.pots().size()));
    }
    for (int i = 0; i < goes; i++) {
      if (i > 0 && cookings.manner() == Manner.RECIPES) {
        parts.add(filling(perRecipe(load.jars(), goes)));
      }
      parts.addAll(cooked(pieces.subList(shared, pieces.size()), amount, cookings.pots().size()));
    }
    return parts;
  }

  /** Jars that one of the recipes of a load fills; the last one fills what is left. */
  static int perRecipe(int jars, int recipes) {
    return Math.min(jars, (jars + recipes - 1) / recipes);
  }

  /** Jars filled at once, with all hands that fill; a spread sets while it waits. */
  Part filling(int jars) {
    TaskTimes.Row row = times.row(TaskKind.FILL, batch.product());
    int used = Math.min(fillers, row.hands());
    Amount amount = new Amount(Fraction.ZERO, jars, Fraction.ZERO);
    Estimate estimate = times.estimate(TaskKind.FILL, batch.product(), amount, Math.max(1, used));
    return new Part(TaskKind.FILL, new Minutes.Guess(estimate), used, row.pots());
  }

  private Amount amount(Cookings cookings, CannerLoad load) {
    Fraction jars =
        cookings.manner() == Manner.LOADS
            ? Fraction.of(load.jars())
            : Fraction.of(batch.jars(), cookings.count());
    Fraction quarts =
        batch.jar().quarts().times(jars).dividedBy(Fraction.of(cookings.pots().size()));
    return new Amount(pounds(Fraction.ONE), jars.ceiling().intValueExact(), quarts);
  }

  private List<Part> cooked(List<Piece> pieces, Amount amount, int pots) {
    TaskTimes.Row row = times.row(TaskKind.COOK, batch.product());
    Estimate all = times.estimate(TaskKind.COOK, batch.product(), amount, row.hands());
    int steps =
        making.cook().stream().filter(p -> p.sort() == Sort.FIRE).mapToInt(Piece::steps).sum();
    List<Part> parts = new ArrayList<>();
    for (Piece piece : pieces) {
      if (piece.sort() == Sort.WAIT) {
        parts.add(waiting(piece, piece.most() <= STAYS_ON ? pots : 0));
      } else {
        Estimate work = part(all, piece.steps(), steps);
        Estimate fire = row.own() ? new Estimate(0, 0) : new Estimate(piece.least(), piece.most());
        parts.add(new Part(TaskKind.COOK, new Minutes.Guess(work.plus(fire)), row.hands(), pots));
      }
    }
    if (making.cook().isEmpty()) {
      parts.add(new Part(TaskKind.COOK, new Minutes.Guess(all), row.hands(), pots));
    }
    return parts;
  }

  /**
   * The liquid of a raw pack, with the time that it boils; where the food stands in it once more
   * before the jars are filled, that comes first.
   *
   * @param first whether that is done here, for all of the batch
   */
  List<Part> liquid(CannerLoad load, boolean first) {
    TaskTimes.Row row = times.row(TaskKind.HEAT_LIQUID, batch.product());
    Amount amount = new Amount(Fraction.ZERO, load.jars(), Fraction.ZERO);
    Estimate heating = times.estimate(TaskKind.HEAT_LIQUID, batch.product(), amount, row.hands());
    List<Part> parts = new ArrayList<>();
    if (heating.max() == 0) {
      return parts;
    }
    List<Piece> pieces = making.cook();
    int last = making.standsAgain() && !first ? pieces.size() - 1 : 0;
    for (Piece piece : pieces.subList(last, pieces.size())) {
      if (piece.sort() == Sort.WAIT) {
        parts.add(waiting(piece, 0));
      } else {
        Estimate fire = new Estimate(row.own() ? 0 : piece.least(), row.own() ? 0 : piece.most());
        parts.add(heated(row, heating.plus(fire)));
      }
    }
    return parts.isEmpty() ? List.of(heated(row, heating)) : parts;
  }

  private static Part heated(TaskTimes.Row row, Estimate estimate) {
    return new Part(TaskKind.HEAT_LIQUID, new Minutes.Guess(estimate), row.hands(), 1);
  }

  private Part hand(TaskKind kind, Fraction share) {
    TaskTimes.Row row = times.row(kind, batch.product());
    int used = Math.min(hands, row.hands());
    return new Part(kind, new Minutes.Guess(estimate(kind, share)), used, row.pots());
  }

  private Estimate estimate(TaskKind kind, Fraction share) {
    int used = Math.min(hands, times.row(kind, batch.product()).hands());
    Amount amount = new Amount(pounds(share), 0, Fraction.ZERO);
    return times.estimate(kind, batch.product(), amount, Math.max(1, used));
  }

  private static Part waiting(Piece piece, int pots) {
    return new Part(
        TaskKind.WAIT,
        new Minutes.Waited(piece.least(), piece.published()),
        0,
        pots,
        OptionalInt.of(piece.place()));
  }

  private static Minutes printed(Piece piece) {
    return piece.sort() == Sort.WAIT
        ? new Minutes.Waited(piece.least(), piece.published())
        : new Minutes.Guess(new Estimate(piece.least(), piece.most()));
  }

  private Fraction pounds(Fraction share) {
    return batch
        .produce()
        .map(p -> p.about().inPounds())
        .orElse(batch.jar().quarts().times(batch.jars()).times(POUNDS_A_QUART))
        .times(share);
  }
}
