package jarwright.checklist;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.day.PlannedBatch;
import jarwright.page.PaperSize;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.render.Conformance;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** A sheet of every kind is PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2) to veraPDF. */
class ChecklistConformanceTest {
  @Test
  void checklistsCanBeReadAloudAndKept() throws Exception {
    PlannedBatch beans =
        PlannedBatch.of("beans-lima-fresh", Method.DIAL_GAUGE, Pack.RAW, JarSize.QUART);
    byte[] pdf =
        Printed.pdf(
            PaperSize.A4, false, Samples.meatSauce(), Samples.tomatoes(), Samples.pickles(), beans);
    assertEquals(List.of(), Conformance.faults(pdf, PDFAFlavour.PDFUA_1));
    assertEquals(List.of(), Conformance.faults(pdf, PDFAFlavour.PDFA_2_A));
  }
}
