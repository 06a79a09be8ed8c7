package jarwright.lot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 7064 MOD 37,36 against identifiers that other standards print with their check character. */
class CheckCharacterTest {
  @ParameterizedTest(name = "{0} is completed by {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          A12425GABC1234002        | M | IFPI, GRid Standard 2.1: A1-2425G-ABC1234002-M
          00000000D07A0090         | Q | ISO 15706 (ISAN), documentation of its agency: 0000-0000-D07A-0090-Q
          00000000D07A009000000000 | X | ISO 15706-2 (V-ISAN), the same work: ...-Q-0000-0000-X
          000000018CFA0000         | I | ISAN of a registered film: 0000-0001-8CFA-0000-I
          000000018CFA000000000000 | K | V-ISAN of the same film: ...-I-0000-0000-K
          188166C734206541         | Y | ISO 15706 (ISAN), documentation of its agency: 1881-66C7-3420-6541-Y
          188166C7342065419F3A0245 | O | ISO 15706-2, the same work: ...-Y-9F3A-0245-O
          A12425GXYZ9876008        | 6 | GRid printed by a validator's test suite: A1-2425G-XYZ9876008-6
          A12425G1234567890        | L | GRid printed by a validator's test suite: A1-2425G-1234567890-L
          """)
  void publishedIdentifiers(String characters, char check, String source) {
    assertEquals(check, CheckCharacter.of(characters), source);
    assertTrue(CheckCharacter.completes(characters, check), source);
  }

  /** The file holds what the library python-stdnum 1.18 (stdnum.iso7064.mod_37_36) computes. */
  @ParameterizedTest(name = "{0} is completed by {1}")
  @CsvFileSource(resources = "/jarwright/mod-37-36.csv", numLinesToSkip = 1)
  void aReferenceLibrarysAnswers(String characters, char check) {
    assertEquals(check, CheckCharacter.of(characters));
  }

  @Test
  void onlyOneCharacterCompletesAString() {
    String all = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    assertEquals(1, all.chars().filter(c -> CheckCharacter.completes("260824A", (char) c)).count());
    assertFalse(CheckCharacter.completes("260824A", 't'));
    assertFalse(CheckCharacter.completes("260824A", '*'));
  }

  @Test
  void otherCharactersAreRefused() {
    assertEquals(
        "'a' is not a digit or capital letter",
        assertThrows(MistypedCode.class, () -> CheckCharacter.of("260824a")).getMessage());
  }
}
