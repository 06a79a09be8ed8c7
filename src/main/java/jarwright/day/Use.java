package jarwright.day;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch in which a load takes hands, pots or its canner.
 *
 * @param from what it starts at
 * @param until what it ends at; the same moment where its length is fixed
 */
record Use(Edge from, Edge until, int resource, int amount) {
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

  /**
   * So many minutes after a moment of a load.
   *
   * @param load number of the load in the day
   */
  record Edge(int load, Moment moment, int offset) {}

  int load() {
    return from.load();
  }

  Moment moment() {
    return from.moment();
  }

  /** Minutes from its moment to its start. */
  int offset() {
    return from.offset();
  }

  /** Whether it depends on one moment alone, and so is of one length always. */
  boolean isFixed() {
    return from.load() == until.load() && from.moment() == until.moment();
  }

  /** Its length where that is fixed. */
  int minutes() {
    if (!isFixed()) {
      throw new IllegalStateException("food is kept hot for as long as it takes");
    }
    return until.offset() - from.offset();
  }

  /**
   * Everything that a load takes; what depends on one moment never overlaps on one resource. Pots
   * in which food is kept hot from the load before come last.
   */
  static List<Use> of(int load, List<LoadWork> loads) {
    LoadWork w = loads.get(load);
    List<Use> uses = new ArrayList<>();
    addAll(uses, load, Moment.PREPARE, 0, w.prepare());
    addHeating(uses, load, w);
    add(uses, load, Moment.FILL, 0, w.fill(), HANDS, w.fillHands());
    add(uses, load, Moment.LOAD, 0, w.load(), HANDS, 1);
    add(uses, load, Moment.LOAD, w.load() + w.canning(), w.unload(), HANDS, 1);
    int canner = FIRST_CANNER + w.canner();
    add(uses, load, Moment.LOAD, 0, w.inCanner() + w.refill(), canner, 1);
    if (w.kept() > 0) {
      uses.add(
          new Use(
              new Edge(load - 1, Moment.FILL, loads.get(load - 1).fill()),
              new Edge(load, Moment.FILL, w.fill()),
              POTS,
              w.kept()));
    }
    return uses;
  }

  private static void addAll(
      List<Use> uses, int load, Moment moment, int offset, List<Stretch> stretches) {
    int at = offset;
    for (Stretch stretch : stretches) {
      add(uses, load, moment, at, stretch.minutes(), HANDS, stretch.hands());
      add(uses, load, moment, at, stretch.minutes(), POTS, stretch.pots());
      at += stretch.minutes();
    }
  }

  /** The food's hands, and pots of jars and food, which are taken until all is filled. */
  private static void addHeating(List<Use> uses, int load, LoadWork w) {
    int[] pots = new int[w.heat() + w.fill()];
    for (int t = w.heat() - w.heatJars(); t < pots.length; t++) {
      pots[t] += w.jarPots();
    }
    int at = w.heat() - w.foodMinutes();
    for (Stretch stretch : w.food()) {
      add(uses, load, Moment.FILL, at - w.heat(), stretch.minutes(), HANDS, stretch.hands());
      for (int until = at + stretch.minutes(); at < until; at++) {
        pots[at] += stretch.pots();
      }
    }
    for (int t = w.heat(); t < pots.length; t++) {
      pots[t] += w.foodPots();
    }
    for (int start = 0, end; start < pots.length; start = end) {
      for (end = start; end < pots.length && pots[end] == pots[start]; ) {
        end++;
      }
      add(uses, load, Moment.FILL, start - w.heat(), end - start, POTS, pots[start]);
    }
  }

  private static void add(
      List<Use> uses, int load, Moment moment, int offset, int minutes, int resource, int amount) {
    if (minutes > 0 && amount > 0) {
      uses.add(
          new Use(
              new Edge(load, moment, offset),
              new Edge(load, moment, offset + minutes),
              resource,
              amount));
    }
  }
}
