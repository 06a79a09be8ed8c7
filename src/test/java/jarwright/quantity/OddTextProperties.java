package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever is written for an amount is read, or refused with one short sentence. */
class OddTextProperties {
  private static final int LONGEST_MESSAGE = 160;
  private static final Style BOTH = Style.english(Units.BOTH);

  private static final List<Consumer<String>> READERS =
      List.of(
          Fraction::parse,
          text -> Volume.parse(text).text(BOTH, Rounding.UP),
          text -> Mass.parse(text).text(BOTH, Rounding.UP),
          text -> Length.parse(text).text(BOTH, Rounding.UP),
          text -> Temperature.parse(text).text(BOTH, Rounding.UP),
          text -> GaugePressure.parse(text).text(BOTH),
          text -> {
            Altitude altitude = Altitude.parse(text);
            assertTrue(altitude.text(BOTH).endsWith("m)"));
            altitude.feetRoundedUp();
          },
          text -> {
            MeasuredText measured = MeasuredText.parse(text);
            measured.text(BOTH, Map.of());
          });

  @Property
  void anyTextAtAll(@ForAll String text) {
    assertReadOrRefused(text);
  }

  @Property
  void textThatLooksLikeAnAmount(@ForAll("nearly") String text) {
    assertReadOrRefused(text);
  }

  @Provide
  Arbitrary<String> nearly() {
    Arbitrary<String> pieces =
        Arbitraries.of(
            "1",
            "0",
            "99999999999999999999",
            "1/2",
            "/",
            "-",
            "--",
            ".",
            ",",
            "..",
            " ",
            "\t",
            "\n",
            "{",
            "}",
            "½",
            "٣",
            "−",
            "°",
            "F",
            "C",
            "m",
            "ft",
            "M",
            "tsp",
            "T",
            "t",
            "cup",
            "cups",
            "fl oz",
            "L",
            "ml",
            "kg",
            "lb",
            "in",
            "mm",
            "psi",
            "kPa",
            "s",
            "min",
            "weeks",
            "mg",
            "e9",
            "E+9",
            "NaN",
            "Infinity",
            "0x1",
            "1_0",
            "\u0000",
            "\uD83C",
            "İ",
            "ı",
            "ſ");
    return pieces.list().ofMinSize(1).ofMaxSize(7).map(list -> String.join("", list));
  }

  private static void assertReadOrRefused(String text) {
    for (Consumer<String> reader : READERS) {
      try {
        reader.accept(text);
      } catch (IllegalArgumentException refused) {
        String message = refused.getMessage();
        assertTrue(message.length() < LONGEST_MESSAGE, message);
        assertTrue(message.lines().count() == 1, message);
      }
    }
  }
}
