package jarwright.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.page.PaperSize;
import jarwright.render.Conformance;
import jarwright.render.Glyphs;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The inventory and the year on paper: complete, in order, nothing cut, nothing outside. */
class ShelfPrintTest {
  private static final Pattern LOT = Pattern.compile("26\\d{4}[A-Z]-[0-9A-Z]");
  private static final Pattern RING = Pattern.compile("(?<=\\s|^)\\d\\d(?=\\s|$)");
  private static final double MARGIN = 12 * 72 / 25.4;

  private static List<String> pages(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<String> pages = new ArrayList<>();
      PDFTextStripper stripper = new PDFTextStripper();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(stripper.getText(document));
      }
      return pages;
    }
  }

  private static int count(Pattern pattern, String text) {
    return Math.toIntExact(pattern.matcher(text).results().count());
  }

  static Stream<Arguments> sheets() {
    List<Arguments> all = new ArrayList<>();
    for (String language : List.of("en", "es")) {
      for (PaperSize paper : List.of(PaperSize.LETTER, PaperSize.A4)) {
        all.add(Arguments.of(ManyJars.inventory(ManyJars.everyUrgency(), language, paper), paper));
        all.add(Arguments.of(ManyJars.year(ManyJars.everyUrgency(), language, paper), paper));
      }
    }
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void canBeReadAloudAndKept(byte[] pdf, PaperSize paper) throws Exception {
    assertEquals(List.of(), Conformance.faults(pdf, PDFAFlavour.PDFUA_1));
    assertEquals(List.of(), Conformance.faults(pdf, PDFAFlavour.PDFA_2_A));
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void nothingStandsInTheMargins(byte[] pdf, PaperSize paper) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        double width = document.getPage(page).getMediaBox().getWidth();
        double height = document.getPage(page).getMediaBox().getHeight();
        for (Glyphs.Run run : Glyphs.of(document, page)) {
          // A space at a line's end prints nothing.
          boolean inside =
              run.text().isBlank()
                  || (run.left() >= MARGIN - 1
                      && run.right() <= width - MARGIN + 1
                      && run.top() >= MARGIN - 1
                      && run.bottom() <= height - MARGIN + 1);
          assertTrue(inside, page + ": " + run);
        }
      }
    }
  }

  /** Lots of twenty: a page has twenty rings for each lot that it names, so none is divided. */
  @ParameterizedTest
  @CsvSource({"20, LETTER", "60, A4", "60, LETTER", "5000, LETTER", "5000, A4"})
  void everyJarHasItsRingAndNoLotIsDivided(int jars, String paper) throws IOException {
    PaperSize size = paper.equals("A4") ? PaperSize.A4 : PaperSize.LETTER;
    List<String> pages = pages(ManyJars.inventory(ManyJars.shelved(jars), "en", size));
    int lots = 0;
    for (String page : pages) {
      String listed = page.replaceAll("(?s)Jars due each month.*?(?=cellar|$)", "");
      listed =
          listed.replaceAll("(?s)In all.*|page \\d+ of \\d+|\\d+ jars|\\d+ of \\d+ so far", "");
      assertEquals(20 * count(LOT, listed), count(RING, listed), page);
      lots += count(LOT, listed);
      if (count(LOT, listed) > 0) {
        assertTrue(page.contains("Strike off"), "the columns are named on each page: " + page);
      }
    }
    assertEquals(jars / 20, lots);
    assertTrue(String.join("", pages).replace(",", "").contains("Jars " + jars));
  }

  /** As many as a plan may have in one batch: the rings of a lot may go on to the next side. */
  @ParameterizedTest
  @CsvSource({
    "en, LETTER, 211",
    "en, LETTER, 212",
    "es, A4, 300",
    "es, LETTER, 2000",
    "en, A4, 2000"
  })
  void aLargeLotHasARingForEachJar(String language, String paper, int jars) throws IOException {
    PaperSize size = paper.equals("A4") ? PaperSize.A4 : PaperSize.LETTER;
    String words =
        String.join(" ", pages(ManyJars.inventory(ManyJars.oneLot(jars), language, size)));
    List<String> rings = List.of(words.split("\\s+"));
    for (int jar = 1; jar <= jars; jar++) {
      assertTrue(rings.contains(String.format(Locale.ROOT, "%02d", jar)), "jar " + jar);
    }
  }

  /** Lines of words on a side below which it looks like a mistake: common practice, no source. */
  @ParameterizedTest
  @ValueSource(ints = {1, 40, 60, 80, 100, 120, 140, 160, 180, 200, 260, 400, 520})
  void noSideHoldsAFewLinesAlone(int jars) throws IOException {
    for (String language : List.of("en", "es")) {
      for (PaperSize paper : PaperSize.NAMED) {
        List<String> pages = pages(ManyJars.inventory(ManyJars.shelved(jars), language, paper));
        for (String page : pages) {
          assertTrue(page.lines().filter(l -> !l.isBlank()).count() >= 9, page);
        }
      }
    }
  }

  @Test
  void oneJarIsOnePage() throws IOException {
    List<String> pages = pages(ManyJars.inventory(ManyJars.shelved(1), "en", PaperSize.LETTER));
    assertEquals(1, pages.size());
    assertTrue(pages.get(0).contains("Jars from elsewhere"), pages.get(0));
    assertTrue(pages.get(0).contains("jarwright count"), pages.get(0));
  }

  @Test
  void whatMustNotBeEatenIsNotAmongWhatIsToBeUsedFirst() throws IOException {
    String words =
        String.join("", pages(ManyJars.inventory(ManyJars.everyUrgency(), "en", PaperSize.LETTER)));
    String due =
        words.substring(words.indexOf("See to these first"), words.indexOf("Jars due each month"));
    // The jar in the refrigerator and the jam; not the beans of a lot of which one was spoiled.
    assertTrue(due.contains("Refrigerator") && due.contains("Jam"), due);
    assertTrue(due.contains("How it was canned is not known: do not eat"), due);
    assertTrue(due.contains("3 jars") && !due.contains("Throw away"), due);
    String away = words.substring(words.indexOf("Do not eat. Throw away."));
    assertTrue(away.indexOf("260901B-") < away.indexOf("cellar A"), away);
    assertTrue(away.contains("take it from cellar B"), away);
  }

  @Test
  void totalsRunAlongTheShelves() throws IOException {
    String words =
        String.join("", pages(ManyJars.inventory(ManyJars.shelved(260), "en", PaperSize.A4)));
    // Five lots of plums, in quarts and half-pints by turns: 60 quarts and 40 half-pints.
    List<String> told =
        Pattern.compile("(\\d+) of 60 so far")
            .matcher(words)
            .results()
            .map(m -> m.group(1))
            .toList();
    assertTrue(told.containsAll(List.of("20", "40", "60")), told.toString());
    assertTrue(words.contains("Jars 260"), words);
  }

  @Test
  void theYearOfAnOrdinaryHouseholdIsOnePage() throws IOException {
    List<String> pages = pages(ManyJars.year(ManyJars.everyUrgency(), "en", PaperSize.LETTER));
    assertEquals(1, pages.size());
    assertTrue(pages.get(0).contains("Why lost: 1 cracked."), pages.get(0));
    assertTrue(pages.get(0).contains("Month by month"), pages.get(0));
  }
}
