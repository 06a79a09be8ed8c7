package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class LoadsTest {
  @Test
  void aFewLoadsAreListedAndManyCounted() {
    assertEquals("9", Loads.text(List.of(9)));
    assertEquals("7 + 7 + 3", Loads.text(List.of(7, 7, 3)));
    assertEquals("4 × 7 + 3", Loads.text(List.of(7, 7, 7, 7, 3)));
    assertEquals("3 × 9 + 2 × 8", Loads.text(List.of(9, 9, 9, 8, 8)));
  }
}
