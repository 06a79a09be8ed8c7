package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.Days.Wish;
import jarwright.plan.Canner;
import jarwright.plan.Kitchen;
import jarwright.process.JarSize;
import jarwright.process.Method;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class LoadPlannerTest {
  private static final Kitchen KITCHEN = Days.kitchen(4, Days.ZONE, Days.POT, Days.DIAL);

  private static List<CannerLoad> loads(Kitchen kitchen, Wish wish) {
    return Days.day(kitchen, wish).loads().stream().map(PlannedLoad::load).toList();
  }

  private static List<Integer> jars(Wish wish) {
    return loads(KITCHEN, wish).stream().map(CannerLoad::jars).toList();
  }

  /** AIB 539 (2015) Guide 1: a canner load is seven quarts or nine pints. */
  @Test
  void sevenQuartsAndNinePintsAreOneLoad() {
    assertEquals(List.of(7), jars(Wish.plums(7)));
    assertEquals(List.of(9), jars(Wish.tomatoes(9)));
  }

  @Test
  void theLastLoadIsBalancedWithTheOthers() {
    assertEquals(List.of(4, 4), jars(Wish.plums(8)));
    assertEquals(List.of(5, 5, 5), jars(Wish.plums(15)));
    assertEquals(List.of(7, 6), jars(Wish.plums(13)));
  }

  /** Good practice by Iowa State University Extension (2024): jars of water in empty places. */
  @Test
  void emptyPlacesOfASmallLoadTakeJarsOfWater() {
    CannerLoad two = loads(KITCHEN, Wish.plums(2)).get(0);
    assertEquals(5, two.waterJars());
    assertEquals(0, loads(KITCHEN, Wish.plums(4)).get(0).waterJars());
  }

  /** The same page: two quarts or four pints at the least in a pressure canner. */
  @Test
  void aPressureLoadBelowTwoQuartsIsFlagged() {
    CannerLoad one = loads(KITCHEN, Wish.beans(1)).get(0);
    assertTrue(one.belowMinimum());
    assertEquals(one.places().total() - 1, one.waterJars());
    assertEquals(false, loads(KITCHEN, Wish.beans(2)).get(0).belowMinimum());
    assertTrue(loads(KITCHEN, Wish.beans(3).of(JarSize.PINT)).get(0).belowMinimum());
    assertEquals(false, loads(KITCHEN, Wish.beans(4).of(JarSize.PINT)).get(0).belowMinimum());
    List<Notice> notices = Days.day(KITCHEN, Wish.beans(1)).notices();
    assertTrue(notices.stream().anyMatch(n -> n.kind() == Notice.Kind.SMALL_PRESSURE_LOAD));
  }

  @Test
  void aCannerTooNarrowForTheJarIsRefusedWithTheWidthItNeeds() {
    Canner narrow = Days.canner("pot", Method.BOILING_WATER, "9 cm", "30 cm", 0);
    assertEquals(
        List.of(
            "plan.yaml:1:10: a quart jar does not go into \"pot\". the canner needs an inside"
                + " diameter of 4 in or more."),
        Days.refusal(Days.kitchen(4, Days.ZONE, narrow), Wish.plums(7)));
  }

  @Test
  void aCannerTooShallowIsRefusedWithTheDepthItNeeds() {
    Canner shallow = Days.canner("pot", Method.BOILING_WATER, "33 cm", "20 cm", 0);
    assertEquals(
        List.of(
            "plan.yaml:1:10: \"pot\" is 20 cm deep, too shallow to cover quart jars by 1 in. it"
                + " needs an inside height of 9-1/2 in for the shortest jars of this size, 10-1/8"
                + " in for the tallest; take a deeper canner or smaller jars."),
        Days.refusal(Days.kitchen(4, Days.ZONE, shallow), Wish.plums(7)));
  }

  @Property(tries = 200)
  void loadsHoldEveryJarOnceAndNeverMoreThanThePlaces(@ForAll @IntRange(min = 1, max = 60) int n) {
    for (Wish wish : List.of(Wish.plums(n), Wish.tomatoes(n), Wish.beans(n))) {
      List<CannerLoad> loads =
          new DayPlanner(Days.BOOK, Days::steps)
              .loads(Days.batches(KITCHEN, wish).get(0), new jarwright.problem.Problems());
      assertEquals(n, loads.stream().mapToInt(CannerLoad::jars).sum());
      int most = loads.stream().mapToInt(CannerLoad::jars).max().orElseThrow();
      int least = loads.stream().mapToInt(CannerLoad::jars).min().orElseThrow();
      assertTrue(most - least <= 1);
      for (CannerLoad load : loads) {
        assertTrue(load.standing() <= load.places().total());
        assertEquals(loads.size(), load.of());
      }
      int fewest = (n + loads.get(0).places().total() - 1) / loads.get(0).places().total();
      assertEquals(fewest, loads.size());
    }
  }
}
