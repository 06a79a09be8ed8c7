package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class RushTest {
  private static Task task(int start, int end, Integer... hands) {
    return new Task(
        TaskKind.FILL,
        0,
        start,
        end,
        new Minutes.Fixed(end - start),
        List.of(hands),
        List.of(),
        end,
        OptionalInt.empty());
  }

  @Test
  void twoAtOnceAreARushAndOneAfterTheOtherIsNone() {
    assertEquals(List.of(), Rush.of(List.of(task(0, 10, 1), task(10, 20, 1))));
    assertEquals(List.of(), Rush.of(List.of(task(0, 10, 1), task(10, 20, 2))));
    assertEquals(List.of(new Rush(5, 10, 2)), Rush.of(List.of(task(0, 10, 1), task(5, 20, 2))));
  }

  @Test
  void aTaskForTwoIsARushByItself() {
    assertEquals(List.of(new Rush(3, 9, 2)), Rush.of(List.of(task(3, 9, 1, 2))));
  }

  @Test
  void theMostPairsOfOneStretchAreTold() {
    assertEquals(
        List.of(new Rush(2, 9, 3), new Rush(12, 14, 2)),
        Rush.of(
            List.of(task(0, 8, 1), task(2, 9, 2), task(5, 9, 3), task(8, 14, 1), task(12, 14, 2))));
  }
}
