package jarwright.render;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Locale;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** What veraPDF, the reference validator of PDF/UA and PDF/A, finds wrong with a file. */
public final class Conformance {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private Conformance() {}

  /** Each rule that is broken once, as its clause and words; none where the file conforms. */
  public static List<String> faults(byte[] pdf, PDFAFlavour flavour) throws Exception {
    Locale usual = Locale.getDefault();
    // The validator writes names in capitals by the default locale, and a Turkish i has another
    // one.
    Locale.setDefault(Locale.ROOT);
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      return validator.validate(parser).getTestAssertions().stream()
          .filter(assertion -> assertion.getStatus() != TestAssertion.Status.PASSED)
          .map(a -> a.getRuleId().getClause() + " " + a.getMessage())
          .distinct()
          .toList();
    } finally {
      Locale.setDefault(usual);
    }
  }
}
