package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.quantity.MeasuredText;
import jarwright.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PausesTest {
  private static final StepWords WORDS = new StepWords(PlannedBatch.WORDS, Units.BOTH);

  @Test
  void nineStepsStayTogether() {
    assertEquals(List.of(9), cut(9));
  }

  @Test
  void longerSectionsAreCutEvenly() {
    assertEquals(List.of(5, 5), cut(10));
    assertEquals(List.of(7, 6, 6), cut(19));
    assertEquals(List.of(9, 8, 8, 8), cut(33));
  }

  @Test
  void aCutMovesToWhereTimeHasRunAnyway() {
    assertEquals(List.of(6, 4), cut(10, 5));
    assertEquals(List.of(3, 7), cut(10, 2));
    assertEquals(List.of(5, 5), cut(10, 8), "too far away");
    assertEquals(List.of(9, 9), cut(18, 7), "the rest would be too long");
  }

  /** Sizes of the parts of so many steps, of which some wait. */
  private static List<Integer> cut(int steps, Integer... waits) {
    List<Step> all = new ArrayList<>();
    IntStream.range(0, steps).forEach(i -> all.add(step(List.of(waits).contains(i))));
    List<Section> parts = Pauses.cut(new Section("produce", "Produce", all), WORDS);
    assertEquals(all, parts.stream().flatMap(p -> p.steps().stream()).toList());
    return parts.stream().map(p -> p.steps().size()).toList();
  }

  private static Step step(boolean waits) {
    Line line = new Line(List.of(new MeasuredText.Run("Stir", false)));
    return waits
        ? new Step.Wait(line, Optional.empty(), Optional.empty())
        : new Step.Action(line, Optional.empty(), Optional.empty());
  }
}
