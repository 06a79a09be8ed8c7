package jarwright.pantry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.files.FoodTables;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class RealGapsTest {
  private static final Required PLAIN = new Required(30, Optional.empty(), false);

  private static Entry run(int load, int start, int end) {
    Observed seen =
        new Observed(
            Optional.of(at(start)),
            Optional.empty(),
            Optional.of(at(end)),
            Ticked.YES,
            Optional.empty(),
            0,
            Ticked.NO,
            Ticked.BLANK,
            Ticked.BLANK);
    return InventedKitchen.entry(InventedKitchen.PLUMS, "1-7", new LoadRun(load, PLAIN, seen, ""));
  }

  private static OffsetDateTime at(int minute) {
    return InventedKitchen.NOON.plusMinutes(minute);
  }

  private static List<Integer> gaps(Entry... runs) {
    List<Entry> entries = new ArrayList<>();
    entries.add(
        InventedKitchen.entry(
            InventedKitchen.PLUMS, "1-28", InventedKitchen.planned("plums", 7, 7, 7, 7)));
    entries.addAll(List.of(runs));
    return RealGaps.minutes(Pantry.of(InventedKitchen.numbered(entries), FoodTables::own), false);
  }

  @Test
  void runFromTheEndOfOneClockToTheStartOfTheNext() {
    assertEquals(List.of(55, 60), gaps(run(1, 0, 30), run(2, 85, 115), run(3, 175, 205)));
  }

  @Test
  void aPauseOrAMissingLoadIsNoGap() {
    assertEquals(List.of(), gaps(run(1, 0, 30), run(2, 271, 301)));
    assertEquals(List.of(), gaps(run(1, 0, 30), run(3, 85, 115)));
    assertEquals(List.of(), gaps(run(1, 0, 30), run(2, 20, 50)));
  }

  @Test
  void theMedianIsTheMiddleOne() {
    assertEquals(OptionalInt.of(60), RealGaps.median(List.of(200, 55, 60)));
    assertEquals(OptionalInt.of(60), RealGaps.median(List.of(55, 60)));
    assertEquals(OptionalInt.empty(), RealGaps.median(List.of()));
  }
}
