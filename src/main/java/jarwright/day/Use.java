package jarwright.day;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch in which a load takes hands, pots or its canner.
 *
 * @param load number of the load in the day
 * @param moment what it hangs on
 * @param offset minutes from that moment to its start
 */
record Use(int load, Moment moment, int offset, int minutes, int resource, int amount) {
  static final int HANDS = 0;
  static final int POTS = 1;

  /** The canners follow, each a resource of its own. */
  static final int FIRST_CANNER = 2;

  /** The three free moments of a load. */
  enum Moment {
    PREPARE(0),
    FILL(1),
    LOAD(2);

    private final int place;

    Moment(int place) {
      this.place = place;
    }

    /** Its place among the three. */
    int place() {
      return place;
    }
  }

  /** Everything that a load takes; what hangs on one moment never overlaps on one resource. */
  static List<Use> of(int load, LoadWork w) {
    List<Use> uses = new ArrayList<>();
    add(uses, load, Moment.PREPARE, 0, w.prepare(), HANDS, w.prepareHands());
    add(uses, load, Moment.PREPARE, 0, w.prepare(), POTS, w.preparePots());
    addPots(uses, load, w);
    add(uses, load, Moment.FILL, -w.heatFood(), w.heatFood(), HANDS, w.foodHands());
    add(uses, load, Moment.FILL, 0, w.fill(), HANDS, w.fillHands());
    add(uses, load, Moment.LOAD, 0, w.load(), HANDS, 1);
    add(uses, load, Moment.LOAD, w.load() + w.canning(), w.unload(), HANDS, 1);
    int canner = FIRST_CANNER + w.canner();
    add(uses, load, Moment.LOAD, 0, w.inCanner() + w.refill(), canner, 1);
    return uses;
  }

  /** First the pot that takes longer alone, then both until all is filled. */
  private static void addPots(List<Use> uses, int load, LoadWork w) {
    int alone = w.heatJars() > w.heatFood() ? w.jarPots() : 1;
    int both = Math.min(w.heatJars(), w.heatFood());
    add(uses, load, Moment.FILL, -w.heat(), w.heat() - both, POTS, alone);
    add(uses, load, Moment.FILL, -both, both + w.fill(), POTS, w.jarPots() + 1);
  }

  private static void add(
      List<Use> uses, int load, Moment moment, int offset, int minutes, int resource, int amount) {
    if (minutes > 0 && amount > 0) {
      uses.add(new Use(load, moment, offset, minutes, resource, amount));
    }
  }
}
