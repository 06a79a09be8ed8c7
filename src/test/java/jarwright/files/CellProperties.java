package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class CellProperties {
  @Provide
  Arbitrary<String> anyText() {
    Arbitrary<String> wild = Arbitraries.strings().all().ofMaxLength(40);
    Arbitrary<String> nasty =
        Arbitraries.strings()
            .withChars("=+-@'\\\n\r\tnrtsu0;,\"|\uD83E\uDED9\u2028\u0085\u0000E19 ")
            .ofMaxLength(12);
    return Arbitraries.oneOf(wild, nasty);
  }

  @Property(tries = 5_000)
  void everyTextComesBackAsItWas(@ForAll("anyText") String text) {
    assertEquals(text, Cell.in(Cell.out(text)));
  }

  @Property(tries = 5_000)
  void noCellIsTakenForAFormulaOrBreaksItsLine(@ForAll("anyText") String text) {
    String cell = Cell.out(text);
    assertFalse(cell.matches("(?s)[=+\\-@\t\r\uFF1D\uFF0B\uFF0D\uFF20].*"), cell);
    assertFalse(cell.matches("(?s).*[\\p{Cntrl};\u0085\u2028\u2029].*"), cell);
  }

  @Property(tries = 5_000)
  void everyCellIsWhatUtf8CanWrite(@ForAll("anyText") String text) {
    String cell = Cell.out(text);
    byte[] bytes = cell.getBytes(StandardCharsets.UTF_8);
    assertEquals(cell, new String(bytes, StandardCharsets.UTF_8));
  }

  @Property
  void everyCellButAPlainOneBeginsWithAnApostrophe(@ForAll("anyText") String text) {
    boolean computed = !text.isEmpty() && "=+-@'".indexOf(text.charAt(0)) >= 0;
    assertTrue(!computed || Cell.out(text).startsWith("'"), text);
  }
}
