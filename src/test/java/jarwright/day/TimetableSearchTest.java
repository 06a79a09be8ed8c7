package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TimetableSearchTest {
  /** Nothing that trying every minute of every moment finds is better, up to four loads. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void smallDaysAreAsGoodAsBruteForceCanMakeThem(int loads) {
    int days = loads < 4 ? 40 : 12;
    for (int seed = 0; seed < days; seed++) {
      DayWork work = new InventedWork(100L * loads + seed).tiny(loads);
      TimetableSearch.Found found = TimetableSearch.search(work);
      assertTrue(found.proven(), "seed " + seed);
      Timetable table = found.timetable();
      int[] reached = {table.finish(), table.waiting(), table.changes()};
      assertArrayEquals(
          new BruteForce(work, table.finish()).best(), reached, "seed " + seed + " " + work);
      assertEquals(table.finish(), found.bound());
      assertKept(table);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void aDayOfUpToFourLoadsIsAlwaysProven(int loads) {
    for (int seed = 0; seed < 100; seed++) {
      TimetableSearch.Found found = TimetableSearch.search(new InventedWork(seed).usual(loads));
      assertTrue(found.proven(), "seed " + seed);
      assertKept(found.timetable());
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {5, 6, 7, 8, 12, 30, 100})
  void aLargeDayIsPossibleAndItsBoundIsBelowIt(int loads) {
    for (int seed = 0; seed < 5; seed++) {
      DayWork work = new InventedWork(seed).usual(loads);
      TimetableSearch.Found found = TimetableSearch.search(work);
      assertTrue(found.bound() <= found.timetable().finish(), "seed " + seed);
      assertKept(found.timetable());
      assertEquals(found, TimetableSearch.search(work), "the same work, the same timetable");
    }
  }

  /** One pot, one batch: the canner is what holds the day up, and its bound is reached. */
  @Test
  void thirtyLoadsInOnePotReachTheBound() {
    LoadWork load =
        new LoadWork(
            0,
            0,
            0,
            List.of(new Stretch(40, 1, 0)),
            LoadWork.ANY_TIME,
            15,
            1,
            List.of(new Stretch(15, 0, 1)),
            true,
            0,
            12,
            2,
            5,
            60,
            5,
            8,
            25);
    DayWork work = new DayWork(java.util.Collections.nCopies(30, load), 2, 3, 10);
    TimetableSearch.Found found = TimetableSearch.search(work);
    assertEquals(found.bound(), found.timetable().finish());
    assertTrue(found.proven());
    assertKept(found.timetable());
  }

  /** The bound of small days is never above what brute force reaches. */
  @Test
  void noBoundIsAboveTheBest() {
    for (int seed = 0; seed < 60; seed++) {
      DayWork work = new InventedWork(seed).tiny(3);
      Clashes clashes = new Clashes(work, Turnarounds.of(work));
      int bound = clashes.bound(clashes.requirements(), 10);
      Timetable quick = QuickTimetable.batchAfterBatch(work);
      assertTrue(bound <= new BruteForce(work, quick.finish()).best()[0], "seed " + seed);
    }
  }

  @Test
  void aQuickTimetableKeepsToTheKitchenInEveryOrder() {
    for (int seed = 0; seed < 100; seed++) {
      DayWork work = new InventedWork(seed).usual(4);
      for (int changes = 0; changes < 4; changes++) {
        for (List<Integer> order : FillOrders.with(work, changes)) {
          QuickTimetable.inOrder(work, order).ifPresent(TimetableSearchTest::assertKept);
        }
      }
    }
  }

  /** Every rule of the kitchen, read from the work and not from the search. */
  private static void assertKept(Timetable table) {
    DayWork work = table.work();
    int last = table.finish() + 1_000;
    int[] hands = new int[last];
    int[] pots = new int[last];
    int[][] canners = new int[work.canners()][last];
    List<Timetable.Moments> moments = new ArrayList<>(table.moments());
    for (int i = 0; i < moments.size(); i++) {
      LoadWork w = work.loads().get(i);
      Timetable.Moments at = moments.get(i);
      int filled = at.fill() + w.fill();
      int hot = at.fill() - w.foodMinutes();
      int prepared = at.prepare() + w.prepareMinutes();
      int needed = w.foodIsPrepared() ? hot : at.fill();
      assertTrue(at.prepare() >= w.release(), "prepared too early");
      assertTrue(prepared <= needed, "needed before it was prepared");
      assertTrue(!w.spoilsByStanding() || needed - prepared <= w.stands(), "stands too long");
      assertTrue(Math.min(hot, at.fill() - w.heatJars()) >= w.release(), "heated too early");
      assertTrue(at.load() >= filled && at.load() <= filled + work.waitLimit(), "jars wait");
      assertTrue(at.load() >= w.release() + w.preheat(), "canner not hot");
      int out = at.load() + w.load() + w.canning();
      addAll(hands, pots, at.prepare(), w.prepare());
      addAll(hands, pots, hot, w.food());
      add(hands, at.fill(), filled, w.fillHands());
      add(hands, at.load(), at.load() + w.load(), 1);
      add(hands, out, out + w.unload(), 1);
      add(pots, at.fill() - w.heatJars(), filled, w.jarPots());
      add(pots, at.fill(), filled, w.foodPots());
      if (w.kept() > 0) {
        int since = moments.get(i - 1).fill() + work.loads().get(i - 1).fill();
        assertTrue(since <= at.fill(), "filled before the load before it");
        add(pots, since, filled, w.kept());
      }
      add(canners[w.canner()], at.load(), out + w.unload() + w.refill(), 1);
    }
    for (int t = 0; t < last; t++) {
      assertTrue(hands[t] <= work.hands() && pots[t] <= work.pots(), "overload at " + t);
      for (int[] canner : canners) {
        assertTrue(canner[t] <= 1, "two loads in a canner at " + t);
      }
    }
  }

  private static void addAll(int[] hands, int[] pots, int from, List<Stretch> stretches) {
    int at = from;
    for (Stretch stretch : stretches) {
      add(hands, at, at + stretch.minutes(), stretch.hands());
      add(pots, at, at + stretch.minutes(), stretch.pots());
      at += stretch.minutes();
    }
  }

  private static void add(int[] row, int from, int to, int amount) {
    for (int t = from; t < to; t++) {
      row[t] += amount;
    }
  }
}
