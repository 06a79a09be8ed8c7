package jarwright.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import jarwright.page.PaperSize;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2), as veraPDF judges. */
class ConformanceTest {
  static Stream<Arguments> printed() {
    String rows =
        "<#list 1..200 as i><row><cell head=\"yes\">${i}</cell><cell>Plums</cell></row></#list>";
    String labels =
        """
        <sheet><labels shape="rect" columns="3" rows="8" w="70" h="37" left="0" top="0.5"
          pitch-x="70" pitch-y="37"><#list 1..60 as i><label><text x="3" y="3" w="40" h="20">Jar
          ${i}</text><qr x="45" y="5" w="20" alt="jar ${i}"><try>LOT ${i}</try></qr></label></#list>
        </labels></sheet>
        """;
    return Stream.of(
        arguments("every element on letter paper", every(Map.of(), PaperSize.LETTER)),
        arguments("every element on A4 paper", every(Map.of("left", 1.8), PaperSize.A4)),
        arguments(
            "a table over several sides",
            Prints.body(
                "<table columns=\"20 *\"><head><cell>No</cell><cell>What</cell></head>"
                    + rows
                    + "</table>")),
        arguments("labels", Prints.pdf(labels, Map.of(), PaperSize.A4)),
        arguments("one word", Prints.body("Plums")));
  }

  private static byte[] every(Map<String, Object> view, PaperSize paper) {
    return Prints.pdf(Prints.TEMPLATES, "every-element.ftl", view, paper);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("printed")
  void everyPrintOutCanBeReadAloud(String what, byte[] pdf) throws Exception {
    assertEquals(List.of(), Conformance.faults(pdf, PDFAFlavour.PDFUA_1), what);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("printed")
  void everyPrintOutCanBeArchived(String what, byte[] pdf) throws Exception {
    assertEquals(List.of(), Conformance.faults(pdf, PDFAFlavour.PDFA_2_A), what);
  }

  /** The checker would find a fault: the same file without its title shown is none any more. */
  @Test
  void theCheckerTellsADamagedFile() throws Exception {
    try (var document = Prints.read(Prints.body("Plums"));
        var out = new java.io.ByteArrayOutputStream()) {
      document.getDocumentCatalog().getViewerPreferences().setDisplayDocTitle(false);
      document.save(out);
      assertFalse(Conformance.faults(out.toByteArray(), PDFAFlavour.PDFUA_1).isEmpty());
    }
  }
}
