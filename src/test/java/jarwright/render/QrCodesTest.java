package jarwright.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.page.DoesNotFit;
import jarwright.page.PaperSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QrCodesTest {
  private static final double DOT = 25.4 / 300;

  private static byte[] print(double room, String... tries) {
    StringBuilder qr = new StringBuilder();
    qr.append("<qr x=\"10\" y=\"10\" w=\"").append(room).append("\" alt=\"a code\">");
    for (String text : tries) {
      qr.append("<try>").append(text).append("</try>");
    }
    return Prints.body("<drawing w=\"120\" h=\"120\" alt=\"\">" + qr + "</qr></drawing>");
  }

  private static QrReader.Reading read(byte[] pdf) {
    List<QrReader.Reading> codes = QrReader.byFirstReader(pdf, 0, 300);
    assertEquals(1, codes.size());
    return codes.get(0);
  }

  private static double width(byte[] pdf) {
    return Rectangles.of(pdf, 0).pictures().get(0).w();
  }

  /**
   * Largest alphanumeric texts of a version at level M (ISO/IEC 18004:2015 table 7): in a square of
   * just that version's modules and quiet zone the full text fits and one letter more does not.
   */
  @ParameterizedTest
  @CsvSource({"1, 21, 20", "2, 25, 38", "3, 29, 61", "4, 33, 90", "5, 37, 122", "6, 41, 154"})
  void theRichestTextIsTakenThatFitsAtTheLeastModule(int version, int side, int capacity) {
    double room = (side + 8) * 0.42 + 0.001;
    String full = "A".repeat(capacity);
    assertEquals(full, read(print(room, full + "A", full)).text());
    var e = assertThrows(DoesNotFit.class, () -> print(room, full + "A"));
    assertEquals((side + 4 + 8) * 0.42, e.needs(), 0.001);
    assertEquals(room, e.has(), 0.001);
  }

  @Test
  void aCodeWithoutRoomIsRefusedWithTheSizeItNeeds() {
    var e = assertThrows(DoesNotFit.class, () -> print(12, "LOT 260824A-K/01"));
    assertEquals(
        "t.ftl:1: <qr> the QR code does not fit: it needs 12.2 mm and has 12.0 mm", e.getMessage());
  }

  @Test
  void recoveryIsRaisedAsFarAsTheCodeStaysTheSameSize() {
    // ISO/IEC 18004:2015 table 7, version 3: alphanumeric 61 at M, 47 at Q, 35 at H
    assertEquals("M", read(print(40, "A".repeat(61))).level());
    assertEquals("M", read(print(40, "A".repeat(48))).level());
    assertEquals("Q", read(print(40, "A".repeat(47))).level());
    assertEquals("M", read(print(40, "A".repeat(39))).level().replace("Q", "M"));
    assertEquals("H", read(print(40, "A".repeat(10))).level());
  }

  @Test
  void aModuleIsWholePrinterDotsWhereThatLeavesItLargeEnough() {
    for (double room = 33 * 0.42 + 0.001; room < 40; room += 0.37) {
      double module = width(print(room, "LOT 260824A-K/01 USE BY 2027-08-24")) / 25;
      assertTrue(module >= 0.4199, "module " + module);
      if (room >= 33 * 5 * DOT) {
        assertEquals(Math.rint(module / DOT), module / DOT, 1e-3, "dots in " + room);
        assertTrue(module >= 5 * DOT - 1e-6, "module " + module);
      }
      assertTrue(module * 33 <= room + 0.005, "quiet zone inside the room");
    }
  }

  @Test
  void itsCornerLiesOnAWholeDot() {
    for (String at : List.of("10", "10.33", "17.71")) {
      byte[] pdf =
          Prints.body(
              "<drawing w=\"60\" h=\"60\" alt=\"\"><qr x=\""
                  + at
                  + "\" y=\""
                  + at
                  + "\" w=\"20\" alt=\"c\"><try>LOT</try></qr></drawing>");
      double dots = Rectangles.of(pdf, 0).pictures().get(0).x() / DOT;
      assertEquals(Math.rint(dots), dots, 0.005);
    }
  }

  @Test
  void wordsBeyondTheAlphanumericSetAreReadBackAsWell() {
    String text = "Ciruelas, peladas · año 2026";
    assertEquals(text, read(print(30, text)).text());
    assertEquals("plain lower case", read(print(30, "plain lower case")).text());
  }

  @Test
  void codesOfOneGroupKeepTheMaskOfTheFirst() {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < 6; i++) {
      all.append("<qr x=\"").append(i % 3 * 30).append("\" y=\"").append(i / 3 * 30);
      all.append("\" w=\"28\" group=\"g\" alt=\"c\"><try>LOT 260824A-K/0").append(i);
      all.append("</try></qr>");
    }
    byte[] pdf = Prints.body("<drawing w=\"100\" h=\"70\" alt=\"\">" + all + "</drawing>");
    List<QrReader.Reading> codes = QrReader.byFirstReader(pdf, 0, 300);
    assertEquals(6, codes.size());
    assertEquals(1, QrReader.masks(pdf, 0, 300).size());
    List<String> texts = new ArrayList<>(codes.stream().map(QrReader.Reading::text).toList());
    texts.sort(null);
    for (int i = 0; i < 6; i++) {
      assertEquals("LOT 260824A-K/0" + i, texts.get(i));
    }
  }

  @Test
  void everyCodeOfALabelSheetIsReadByTwoReaders() {
    byte[] pdf = Prints.pdf(Prints.TEMPLATES, "every-element.ftl", Map.of(), PaperSize.LETTER);
    List<String> wanted = new ArrayList<>();
    for (int n = 1; n <= 9; n++) {
      wanted.add(
          "LOT 26082%1$dA-K/0%1$d USE BY 2027-08-2%1$d PLUMS RAW QUART BOILING WATER 25 MIN"
              .replace("%1$d", String.valueOf(n)));
    }
    int page = QrReader.pageOfFirstCode(pdf);
    assertEquals(wanted, QrReader.texts(QrReader.byFirstReader(pdf, page, 300)));
    assertEquals(wanted, QrReader.bySecondReader(pdf, page, 300));
  }
}
