package jarwright.lot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What the check character catches: a wrong lot on a recall list is a jar that nobody finds. */
class MistypingProperties {
  private static final String CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

  @Property
  void everySingleWrongCharacterIsFound(
      @ForAll("codes") String code,
      @ForAll @IntRange(max = 11) int place,
      @ForAll @IntRange(max = 35) int other) {
    int at = place % code.length();
    char wrong = CHARACTERS.charAt(other);
    Assume.that(wrong != code.charAt(at));
    String typed = code.substring(0, at) + wrong + code.substring(at + 1);
    assertEquals(false, completes(typed), typed);
  }

  @Property
  void everyWrongCharacterOfALotIsCalledMistyped(
      @ForAll("lots") LotCode lot,
      @ForAll @IntRange(max = 8) int at,
      @ForAll @IntRange(max = 35) int other) {
    String written = lot.toString();
    char wrong = CHARACTERS.charAt(other);
    Assume.that(wrong != written.charAt(at));
    assertEquals(true, isMistyped(written.substring(0, at) + wrong + written.substring(at + 1)));
  }

  /** Of all swaps of neighbours in 30 years of lots: ISO 7064 promises "all or nearly all". */
  @Example
  void nearlyAllSwapsOfNeighboursAreFound() {
    int swaps = 0;
    int missed = 0;
    for (LocalDate day = LocalDate.of(2026, 1, 1); day.getYear() < 2056; day = day.plusDays(1)) {
      for (char letter : new char[] {'A', 'F', 'K', 'P', 'U', 'Z'}) {
        String code = new LotCode(day, letter).toString().replace("-", "");
        for (int i = 0; i + 1 < code.length(); i++) {
          if (code.charAt(i) != code.charAt(i + 1)) {
            swaps++;
            missed += completes(swapped(code, i)) ? 1 : 0;
          }
        }
      }
    }
    assertTrue(swaps > 300_000, "swaps tried: " + swaps);
    assertTrue(missed * 100 < swaps, missed + " of " + swaps + " swaps not found");
  }

  @Property
  void aLotReadsBackHoweverItIsTyped(@ForAll("lots") LotCode lot) {
    assertEquals(lot, LotCode.parse(lot.toString()));
    assertEquals(lot, LotCode.parse("  " + lot.toString().toLowerCase(java.util.Locale.ROOT)));
  }

  @Property
  void aJarReadsBack(@ForAll("lots") LotCode lot, @ForAll @IntRange(min = 1, max = 2_000) int n) {
    assertEquals(lot.jar(n), JarId.parse(lot.jar(n).toString()));
  }

  @Property
  void anyOtherTextIsCalledMistyped(@ForAll String text) {
    Assume.that(!text.strip().matches("(?i)\\d{6}[a-z]-[0-9a-z](/\\d+)?"));
    assertEquals(true, isMistyped(text));
    try {
      JarId.parse(text);
    } catch (MistypedCode mistyped) {
      assertTrue(mistyped.getMessage().length() < 120, mistyped.getMessage());
    }
  }

  @Property
  void lotsAndJarsSortByDayThenLetterThenNumber(
      @ForAll("lots") LotCode a,
      @ForAll("lots") LotCode b,
      @ForAll @IntRange(min = 1, max = 99) int n,
      @ForAll @IntRange(min = 1, max = 99) int m) {
    assertEquals(
        Integer.signum(a.toString().compareTo(b.toString())), Integer.signum(a.compareTo(b)));
    int expected = a.equals(b) ? Integer.compare(n, m) : Integer.signum(a.compareTo(b));
    assertEquals(expected, Integer.signum(a.jar(n).compareTo(b.jar(m))));
  }

  @Provide
  Arbitrary<LotCode> lots() {
    Arbitrary<LocalDate> days =
        Arbitraries.integers().between(0, 36_524).map(LocalDate.of(2000, 1, 1)::plusDays);
    return Combinators.combine(days, Arbitraries.chars().range('A', 'Z'))
        .as(LotCode::new)
        .edgeCases(edges -> edges.none());
  }

  @Provide
  Arbitrary<String> codes() {
    return Arbitraries.strings()
        .withChars(CHARACTERS)
        .ofMinLength(1)
        .ofMaxLength(11)
        .map(s -> s + CheckCharacter.of(s));
  }

  private static boolean completes(String code) {
    int last = code.length() - 1;
    return CheckCharacter.completes(code.substring(0, last), code.charAt(last));
  }

  private static String swapped(String code, int i) {
    return code.substring(0, i) + code.charAt(i + 1) + code.charAt(i) + code.substring(i + 2);
  }

  private static boolean isMistyped(String text) {
    try {
      LotCode.parse(text);
      return false;
    } catch (MistypedCode mistyped) {
      return true;
    }
  }
}
