package jarwright.checklist;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.day.PlannedBatch;
import jarwright.page.PaperSize;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import java.io.ByteArrayInputStream;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** A sheet of every kind is PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2) to veraPDF. */
class ChecklistConformanceTest {
  @BeforeAll
  static void makeReady() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  @Test
  void checklistsCanBeReadAloudAndKept() throws Exception {
    PlannedBatch beans =
        PlannedBatch.of("beans-lima-fresh", Method.DIAL_GAUGE, Pack.RAW, JarSize.QUART);
    byte[] pdf =
        Printed.pdf(
            PaperSize.A4, false, Samples.meatSauce(), Samples.tomatoes(), Samples.pickles(), beans);
    assertEquals(List.of(), faults(pdf, PDFAFlavour.PDFUA_1));
    assertEquals(List.of(), faults(pdf, PDFAFlavour.PDFA_2_A));
  }

  private static List<String> faults(byte[] pdf, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour)) {
      return Foundries.defaultInstance()
          .createValidator(flavour, false)
          .validate(parser)
          .getTestAssertions()
          .stream()
          .filter(a -> a.getStatus() != TestAssertion.Status.PASSED)
          .map(a -> a.getRuleId().getClause() + " " + a.getMessage())
          .distinct()
          .toList();
    }
  }
}
