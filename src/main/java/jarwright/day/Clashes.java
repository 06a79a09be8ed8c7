package jarwright.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The uses of a day, and which of them cannot overlap. */
final class Clashes {
  private final DayWork work;
  private final Turnarounds turnarounds;
  private final List<Use> uses = new ArrayList<>();
  private final List<Pair> pairs = new ArrayList<>();
  private final Occupancy occupancy;

  /**
   * One way to order two uses: the moment at which the later one starts follows the moment at which
   * the earlier one ends.
   */
  record Order(int earlier, int later, int minutes) {
    /** How much later than it must it could still come. */
    int room(Gaps gaps) {
      return gaps.room(earlier, later, minutes);
    }

    boolean isRequired(Gaps gaps) {
      return gaps.between(earlier, later) >= minutes;
    }

    boolean isAllowed(Gaps gaps) {
      return gaps.allows(earlier, later, minutes);
    }

    boolean isKept(int[] at) {
      return at[later] - at[earlier] >= minutes;
    }
  }

  /** Two uses of which one must end before the other starts. */
  record Pair(Order once, Order turned) {}

  Clashes(DayWork work, Turnarounds turnarounds) {
    this.work = work;
    this.turnarounds = turnarounds;
    this.occupancy = new Occupancy(work);
    for (int i = 0; i < work.loads().size(); i++) {
      uses.addAll(Use.of(i, work.loads()));
    }
    for (int i = 0; i < uses.size(); i++) {
      for (int j = i + 1; j < uses.size(); j++) {
        Use a = uses.get(i);
        Use b = uses.get(j);
        boolean tooMuch =
            a.resource() == b.resource()
                && a.amount() + b.amount() > occupancy.capacity(a.resource());
        boolean together = a.isFixed() && b.isFixed() && start(a) == start(b);
        if (tooMuch && !together) {
          pairs.add(new Pair(order(a, b), order(b, a)));
        }
      }
    }
  }

  /** Number of a moment among all of the day; 0 is the day's start. */
  static int moment(int load, Use.Moment moment) {
    return 3 * load + 1 + moment.place();
  }

  private static int moment(Use.Edge edge) {
    return moment(edge.load(), edge.moment());
  }

  /** Number of the moment at which a use starts. */
  static int start(Use use) {
    return moment(use.from());
  }

  /** The later use starts when the earlier one is over. */
  Order order(Use earlier, Use later) {
    int minutes =
        earlier.resource() >= Use.FIRST_CANNER
            ? turnarounds.between(earlier.load(), later.load())
            : earlier.until().offset() - later.offset();
    return new Order(moment(earlier.until()), start(later), minutes);
  }

  /** Settles every pair that can only go one way round; false where one can go neither way. */
  boolean settle(Gaps gaps) {
    boolean again = true;
    while (again) {
      again = false;
      for (Pair pair : pairs) {
        if (pair.once().isRequired(gaps) || pair.turned().isRequired(gaps)) {
          continue;
        }
        boolean once = pair.once().isAllowed(gaps);
        boolean turned = pair.turned().isAllowed(gaps);
        if (!once && !turned) {
          return false;
        }
        if (!turned) {
          again |= require(gaps, pair.once());
        } else if (!once) {
          again |= require(gaps, pair.turned());
        }
      }
    }
    return true;
  }

  private static boolean require(Gaps gaps, Order order) {
    return gaps.require(order.earlier(), order.later(), order.minutes());
  }

  /**
   * Of the pairs that overlap at the given moments the one that leaves the least room to choose;
   * none where no two uses overlap that must not.
   */
  Optional<Pair> tightest(Gaps gaps, int[] at) {
    Pair found = null;
    int least = Integer.MAX_VALUE;
    for (Pair pair : pairs) {
      if (!pair.once().isKept(at) && !pair.turned().isKept(at)) {
        int room = Math.min(pair.once().room(gaps), pair.turned().room(gaps));
        if (room < least) {
          least = room;
          found = pair;
        }
      }
    }
    return Optional.ofNullable(found);
  }

  /** The least finish that each resource by itself allows under the requirements. */
  int bound(Gaps gaps, int end) {
    int bound = gaps.between(0, end);
    for (int resource = 0; resource < occupancy.resources(); resource++) {
      List<LowerBound.Part> parts = new ArrayList<>();
      for (Use use : uses) {
        if (use.resource() == resource) {
          int head = gaps.between(0, start(use)) + use.offset();
          int minutes =
              resource >= Use.FIRST_CANNER ? turnarounds.least(use.load()) : least(use, gaps);
          int tail =
              use.isFixed()
                  ? gaps.between(start(use), end) - use.offset() - minutes
                  : gaps.between(moment(use.until()), end) - use.until().offset();
          parts.add(new LowerBound.Part(head, minutes, use.amount(), tail));
        }
      }
      bound = Math.max(bound, LowerBound.of(parts, occupancy.capacity(resource)));
    }
    return bound;
  }

  /** Its length, or the least that it can be where that depends on two moments. */
  private static int least(Use use, Gaps gaps) {
    return gaps.between(start(use), moment(use.until())) + use.until().offset() - use.offset();
  }

  /** The earliest uses that together want more than there is; empty where none do. */
  List<Use> first(int[] at) {
    List<Use> found = List.of();
    int when = Integer.MAX_VALUE;
    for (Use late : uses) {
      int start = at[start(late)] + late.offset();
      if (start < when) {
        List<Use> together = at(at, late.resource(), start);
        if (sum(together) > occupancy.capacity(late.resource())) {
          found = together;
          when = start;
        }
      }
    }
    return found;
  }

  private List<Use> at(int[] at, int resource, int minute) {
    List<Use> together = new ArrayList<>();
    for (Use use : uses) {
      int from = at[start(use)] + use.offset();
      int until = at[moment(use.until())] + use.until().offset();
      if (use.resource() == resource && from <= minute && minute < until) {
        together.add(use);
      }
    }
    return together;
  }

  private static int sum(List<Use> uses) {
    int sum = 0;
    for (Use use : uses) {
      sum += use.amount();
    }
    return sum;
  }

  /** What every timetable of the day has to keep to. */
  Gaps requirements() {
    List<LoadWork> loads = work.loads();
    int end = 3 * loads.size() + 1;
    Gaps gaps = new Gaps(end + 1);
    for (int i = 0; i < loads.size(); i++) {
      LoadWork load = loads.get(i);
      int prepare = moment(i, Use.Moment.PREPARE);
      int fill = moment(i, Use.Moment.FILL);
      int loading = moment(i, Use.Moment.LOAD);
      gaps.require(0, prepare, load.release());
      gaps.require(0, fill, load.release() + load.heat());
      gaps.require(0, loading, load.release() + load.preheat());
      gaps.require(prepare, fill, load.toFill());
      if (load.spoilsByStanding()) {
        gaps.require(fill, prepare, -load.toFill() - load.stands());
      }
      gaps.require(fill, loading, load.fill());
      gaps.require(loading, fill, -load.fill() - work.waitLimit());
      gaps.require(loading, end, load.inCanner());
      if (i > 0 && loads.get(i - 1).batch() == load.batch()) {
        gaps.require(moment(i - 1, Use.Moment.PREPARE), prepare, 0);
        int filled = load.kept() > 0 ? loads.get(i - 1).fill() : 0;
        gaps.require(moment(i - 1, Use.Moment.FILL), fill, filled);
        gaps.require(moment(i - 1, Use.Moment.LOAD), loading, turnarounds.between(i - 1, i));
      }
    }
    return gaps;
  }
}
