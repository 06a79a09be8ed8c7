package jarwright.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

/** What a program that follows the tags says, in its order. */
class ReadAloudTest {

  /** The elements in order, as {@code H1 words} or {@code L} for one that only groups. */
  private static List<String> aloud(byte[] pdf) {
    try (PDDocument document = Prints.read(pdf)) {
      Map<String, String> words = new HashMap<>();
      for (PDPage page : document.getPages()) {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.setSuppressDuplicateOverlappingText(false);
        extractor.processPage(page);
        for (PDMarkedContent content : extractor.getMarkedContents()) {
          words.merge(key(page, content.getMCID()), text(content), String::concat);
        }
      }
      List<String> said = new ArrayList<>();
      walk(document.getDocumentCatalog().getStructureTreeRoot(), null, words, said);
      return said;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String key(PDPage page, int mcid) {
    return System.identityHashCode(page.getCOSObject()) + "/" + mcid;
  }

  private static String text(PDMarkedContent content) {
    StringBuilder text = new StringBuilder();
    for (Object part : content.getContents()) {
      if (part instanceof TextPosition glyph) {
        text.append(glyph.getUnicode());
      } else if (part instanceof PDMarkedContent inner) {
        text.append(inner.getActualText() == null ? text(inner) : inner.getActualText());
      }
    }
    return text.toString();
  }

  private static void walk(
      PDStructureNode node, PDPage page, Map<String, String> words, List<String> said) {
    StringBuilder own = new StringBuilder();
    int place = said.size();
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        walk(element, element.getPage(), words, said);
      } else if (kid instanceof PDMarkedContentReference reference) {
        own.append(words.get(key(reference.getPage(), reference.getMCID())));
      } else if (kid instanceof Integer mcid) {
        own.append(words.get(key(page, mcid)));
      }
    }
    if (node instanceof PDStructureElement element) {
      String alt = element.getAlternateDescription();
      String all = alt == null ? own.toString().strip() : alt;
      said.add(place, (element.getStructureType() + " " + all).strip());
    }
  }

  @Test
  void wordsAtTheEndsOfLinesAreNotJoinedAndDividedOnesAreWhole() {
    String words =
        "Wash the jars, look each rim over with a finger, and set out as many as the load takes; a"
            + " nicked one does not seal, whatever the strawberries say";
    for (double width = 20; width < 60; width += 3) {
      String drawing =
          "<columns widths=\""
              + width
              + " *\"><column hyphenate=\"yes\"><para>"
              + words
              + "</para></column><column/></columns>";
      List<String> said = aloud(Prints.body(drawing));
      assertEquals(List.of("Document", "P " + words), plain(said));
    }
  }

  /** Without the soft hyphens that divided words are said with. */
  private static List<String> plain(List<String> said) {
    return said.stream().map(line -> line.replace("\u00AD", "")).toList();
  }

  @Test
  void aStepIsAnItemOfAList() {
    String steps =
        "<steps box=\"7\" numbered=\"yes\"><step>Wash <figure>7 jars</figure>.</step><step>Add"
            + " <frac>1 1/2 tsp</frac>.<marks count=\"3\"/></step></steps>";
    assertEquals(
        List.of(
            "Document",
            "L",
            "LI",
            "Lbl 1.",
            "LBody",
            "P Wash 7 jars.",
            "LI",
            "Lbl 2.",
            "LBody",
            "P Add 1 1⁄2 tsp.",
            "P 1 2 3"),
        aloud(Prints.body(steps)));
  }

  @Test
  void aTableIsReadRowByRow() {
    String table =
        "<table columns=\"* *\"><head><cell>Lot</cell><cell>Jars</cell></head><row><cell"
            + " head=\"yes\">A</cell><cell>7</cell></row><row><cell"
            + " span=\"2\"><para>b</para><para>c</para></cell></row></table>";
    assertEquals(
        List.of(
            "Document",
            "Table",
            "TR",
            "TH Lot",
            "TH Jars",
            "TR",
            "TH A",
            "TD 7",
            "TR",
            "TD",
            "P b",
            "P c"),
        aloud(Prints.body(table)));
  }

  @Test
  void headersAndRepeatedHeadsAreNotReadAgain() {
    String rows = "<#list 1..90 as i><row><cell>${i}</cell></row></#list>";
    List<String> said =
        aloud(
            Prints.pdf(
                "<sheet><section><header>Running</header><body><heading>Shelf</heading><table"
                    + " columns=\"*\"><head><cell>Lot</cell></head>"
                    + rows
                    + "</table></body></section></sheet>"));
    assertEquals(1, said.stream().filter("TH Lot"::equals).count());
    assertEquals(90, said.stream().filter(line -> line.startsWith("TD ")).count());
    assertTrue(said.stream().noneMatch(line -> line.contains("Running")), "running head");
    assertEquals("H1 Shelf", said.get(1));
  }

  @Test
  void aDrawingIsSaidByItsWordsAndOrnamentIsNot() {
    String drawing = "<drawing w=\"9\" h=\"9\" alt=\"%s\"><text x=\"1\" y=\"5\">x</text></drawing>";
    assertEquals(
        List.of("Document", "Figure The day"),
        aloud(Prints.body(drawing.replace("%s", "The day"))));
    assertEquals(List.of("Document"), aloud(Prints.body(drawing.replace("%s", ""))));
  }
}
