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
   * Two uses of which one must end before the other starts.
   *
   * @param first moment that the first hangs on
   * @param second moment that the second hangs on
   * @param after least minutes from the first moment to the second where the first use comes first
   * @param before the same the other way round
   */
  record Pair(int first, int second, int after, int before) {
    Pair turned() {
      return new Pair(
          /* first= */ second, /* second= */ first, /* after= */ before, /* before= */ after);
    }

    /** How much later than it must the second could still come after the first. */
    int room(Gaps gaps) {
      return gaps.room(first, second, after);
    }
  }

  Clashes(DayWork work, Turnarounds turnarounds) {
    this.work = work;
    this.turnarounds = turnarounds;
    this.occupancy = new Occupancy(work);
    for (int i = 0; i < work.loads().size(); i++) {
      uses.addAll(Use.of(i, work.loads().get(i)));
    }
    for (int i = 0; i < uses.size(); i++) {
      for (int j = i + 1; j < uses.size(); j++) {
        Use a = uses.get(i);
        Use b = uses.get(j);
        boolean tooMuch =
            a.resource() == b.resource()
                && a.amount() + b.amount() > occupancy.capacity(a.resource());
        if (tooMuch && moment(a) != moment(b)) {
          pairs.add(pair(a, b));
        }
      }
    }
  }

  /** Number of a moment among all of the day; 0 is the day's start. */
  static int moment(int load, Use.Moment moment) {
    return 3 * load + 1 + moment.place();
  }

  static int moment(Use use) {
    return moment(use.load(), use.moment());
  }

  Pair pair(Use first, Use second) {
    return new Pair(moment(first), moment(second), apart(first, second), apart(second, first));
  }

  /** Minutes that the second's moment must follow the first's, for the uses not to overlap. */
  private int apart(Use first, Use second) {
    return first.resource() >= Use.FIRST_CANNER
        ? turnarounds.between(first.load(), second.load())
        : first.offset() + first.minutes() - second.offset();
  }

  /** Settles every pair that can only go one way round; false where one can go neither way. */
  boolean settle(Gaps gaps) {
    boolean again = true;
    while (again) {
      again = false;
      for (Pair pair : pairs) {
        if (gaps.between(pair.first(), pair.second()) >= pair.after()
            || gaps.between(pair.second(), pair.first()) >= pair.before()) {
          continue;
        }
        boolean after = gaps.allows(pair.first(), pair.second(), pair.after());
        boolean before = gaps.allows(pair.second(), pair.first(), pair.before());
        if (!after && !before) {
          return false;
        }
        if (!before) {
          again |= gaps.require(pair.first(), pair.second(), pair.after());
        } else if (!after) {
          again |= gaps.require(pair.second(), pair.first(), pair.before());
        }
      }
    }
    return true;
  }

  /**
   * Of the pairs that overlap at the given moments the one that leaves the least room to choose;
   * none where no two uses overlap that must not.
   */
  Optional<Pair> tightest(Gaps gaps, int[] at) {
    Pair found = null;
    int least = Integer.MAX_VALUE;
    for (Pair pair : pairs) {
      int apart = at[pair.second()] - at[pair.first()];
      if (apart < pair.after() && -apart < pair.before()) {
        int room = Math.min(pair.room(gaps), pair.turned().room(gaps));
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
          int head = gaps.between(0, moment(use)) + use.offset();
          int minutes =
              resource >= Use.FIRST_CANNER ? turnarounds.least(use.load()) : use.minutes();
          int tail = gaps.between(moment(use), end) - use.offset() - minutes;
          parts.add(new LowerBound.Part(head, minutes, use.amount(), tail));
        }
      }
      bound = Math.max(bound, LowerBound.of(parts, occupancy.capacity(resource)));
    }
    return bound;
  }

  /** The earliest uses that together want more than there is; empty where none do. */
  List<Use> first(int[] at) {
    List<Use> found = List.of();
    int when = Integer.MAX_VALUE;
    for (Use late : uses) {
      int start = at[moment(late)] + late.offset();
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
      int from = at[moment(use)] + use.offset();
      if (use.resource() == resource && from <= minute && minute < from + use.minutes()) {
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
      gaps.require(fill, loading, load.fill());
      gaps.require(loading, fill, -load.fill() - work.waitLimit());
      gaps.require(loading, end, load.inCanner());
      if (i > 0 && loads.get(i - 1).batch() == load.batch()) {
        gaps.require(moment(i - 1, Use.Moment.PREPARE), prepare, 0);
        gaps.require(moment(i - 1, Use.Moment.FILL), fill, 0);
        gaps.require(moment(i - 1, Use.Moment.LOAD), loading, turnarounds.between(i - 1, i));
      }
    }
    return gaps;
  }
}
