package jarwright.lot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Mode;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QrTextTest {
  /** ISO/IEC 18004:2024 7.4.4, the 45 characters of the alphanumeric mode. */
  private static final String SET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

  private static final LocalDate PACKED = LocalDate.of(2026, 8, 24);
  private static final JarId JAR = new LotCode(PACKED, 'A').jar(3);
  private static final UseBy USE_BY = UseBy.after(PACKED, 12);

  @Test
  void theFullestTextComesFirstAndTheLeastLast() {
    assertEquals(
        List.of(
            "LOT 260824A-T/03 USE BY 2027-08-24 PLUMS RAW PACK 25 MIN",
            "LOT 260824A-T/03 USE BY 2027-08-24 PLUMS RAW PACK",
            "LOT 260824A-T/03 USE BY 2027-08-24 PLUMS",
            "LOT 260824A-T/03 USE BY 2027-08-24"),
        QrText.words(JAR, USE_BY, List.of("Plums", "raw pack", "25 min")));
  }

  @ParameterizedTest(name = "\"{0}\" is shown as \"{1}\"")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Puré de manzana   | PURE DE MANZANA
          1/2 tsp           | 1/2 TSP
          Chile (hot)       | CHILE HOT
          a_b=c&d?e,f#g     | A B C D E F G
          Straße            | STRASSE
          iğne              | IGNE
          """)
  void detailsAreWrittenInTheSet(String detail, String shown) {
    assertEquals(
        "LOT 260824A-T/03 USE BY 2027-08-24 " + shown,
        QrText.words(JAR, USE_BY, List.of(detail)).get(0));
  }

  @Test
  void aDetailWithNothingInTheSetIsLeftOut() {
    assertEquals(
        List.of("LOT 260824A-T/03 USE BY 2027-08-24 JAM", "LOT 260824A-T/03 USE BY 2027-08-24"),
        QrText.words(JAR, USE_BY, List.of("李子", "jam")));
  }

  @Test
  void anAddressShowsLotAndDateToo() {
    String address = "HTTP://PANTRY.LAN:8080/260824A-T/03/USE-BY-2027-08-24";
    assertEquals(address, QrText.address("http://pantry.lan:8080", JAR, USE_BY));
    assertEquals(address, QrText.address("http://pantry.lan:8080/", JAR, USE_BY));
    assertEquals(Optional.of(new QrText.Read(JAR, USE_BY.date(), "")), QrText.parse(address));
  }

  @Test
  void wordsReadBackWhateverLetterCaseAScannerGives() {
    String text = QrText.words(JAR, USE_BY, List.of("plums", "raw")).get(0);
    Optional<QrText.Read> read = Optional.of(new QrText.Read(JAR, USE_BY.date(), "PLUMS RAW"));
    assertEquals(read, QrText.parse(text));
    assertEquals(read, QrText.parse(" " + text.toLowerCase(Locale.ROOT) + "\r\n"));
  }

  @Property
  void everyTextReadsBackAndStaysInTheSet(@ForAll("details") List<String> details) {
    for (String text : QrText.words(JAR, USE_BY, details)) {
      assertTrue(text.chars().allMatch(c -> SET.indexOf(c) >= 0), text);
      QrText.Read read = QrText.parse(text).orElseThrow();
      assertEquals(JAR, read.jar());
      assertEquals(USE_BY.date(), read.useBy());
      assertTrue(text.endsWith(read.rest()) && text.equals(text.strip()), text);
    }
  }

  @Property
  void everyCharacterOfTheSetIsKept(@ForAll("inSet") String detail) {
    String text = QrText.words(JAR, USE_BY, List.of(detail)).get(0);
    assertTrue(text.endsWith(detail.strip().replaceAll(" {2,}", " ")), text);
  }

  @Property
  void anyOtherTextIsNoJarsCode(@ForAll String text) {
    assertEquals(Optional.empty(), QrText.parse(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "LOT 260824A-T/03",
        "LOT 260824A-T/03 USE BY 27-08-24",
        "LOT 260824A-T/03 USE BY 2027-08-24X",
        "FTP://PANTRY.LAN/260824A-T/03/USE-BY-2027-08-24",
        "HTTP://PANTRY.LAN/260824A-T/03"
      })
  void aTextOfAnotherFormIsNoJarsCode(String text) {
    assertEquals(Optional.empty(), QrText.parse(text));
  }

  @Test
  void aTextLongerThanAnyCodeIsNotLookedAt() {
    String most = "LOT 260824A-T/03 USE BY 2027-08-24 " + "A".repeat(4_296 - 35);
    assertEquals(true, QrText.parse(most).isPresent());
    assertEquals(Optional.empty(), QrText.parse(most + "A"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          LOT 260824A-S/03 USE BY 2027-08-24 | "260824A-S" is mistyped: its check character does not fit
          LOT 260824A-T USE BY 2027-08-24    | "260824A-T" is mistyped: a jar is its lot, /, and two or more digits
          LOT 260824A-T/03 USE BY 2027-02-30 | "2027-02-30" is no date
          HTTP://P.LAN/260824A-S/03/USE-BY-2027-08-24 | "260824A-S" is mistyped: its check character does not fit
          """)
  void aCodeThatCannotHaveBeenPrintedIsCalledMistyped(String text, String message) {
    assertEquals(message, assertThrows(MistypedCode.class, () -> QrText.parse(text)).getMessage());
  }

  /** ISO/IEC 18004:2024 Table 7: what each version and level holds in alphanumeric mode. */
  @ParameterizedTest(name = "version {0}-{1} holds {3} characters")
  @CsvFileSource(resources = "/jarwright/qr-capacity.csv", numLinesToSkip = 1)
  void textsFillSymbolsToTheirAlphanumericCapacity(
      int version, String level, int numeric, int alphanumeric, int bytes) throws Exception {
    String least = QrText.words(JAR, USE_BY, List.of()).get(0);
    if (alphanumeric <= least.length() + 1) {
      return;
    }
    String detail = "A".repeat(alphanumeric - least.length() - 1);
    String full = QrText.words(JAR, USE_BY, List.of(detail)).get(0);
    assertEquals(alphanumeric, full.length());
    assertEquals(version, encoded(full, level).getVersion().getVersionNumber());
    String more = QrText.words(JAR, USE_BY, List.of(detail + "A")).get(0);
    assertEquals(version + 1, encoded(more, level).getVersion().getVersionNumber());
  }

  /** The least text needs a symbol of 25 modules at level M: 38 characters, ISO/IEC 18004. */
  @Test
  void theLeastTextAndAnAddressFitSmallSymbols() throws Exception {
    String least = QrText.words(JAR, USE_BY, List.of()).get(0);
    assertEquals(2, encoded(least, "M").getVersion().getVersionNumber());
    String address = QrText.address("http://pantry.lan:8080", JAR, USE_BY);
    assertEquals(3, encoded(address, "M").getVersion().getVersionNumber());
  }

  private static QRCode encoded(String text, String level) throws WriterException, IOException {
    QRCode code = Encoder.encode(text, ErrorCorrectionLevel.valueOf(level));
    assertEquals(Mode.ALPHANUMERIC, code.getMode());
    assertEquals(text.length(), text.getBytes(StandardCharsets.US_ASCII).length);
    return code;
  }

  @Provide
  Arbitrary<List<String>> details() {
    return Arbitraries.strings().ofMaxLength(20).list().ofMaxSize(6);
  }

  @Provide
  Arbitrary<String> inSet() {
    return Arbitraries.strings().withChars(SET).ofMinLength(1).ofMaxLength(30);
  }
}
