package jarwright.render;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.lowagie.text.pdf.hyphenation.Hyphenation;
import com.lowagie.text.pdf.hyphenation.HyphenationTree;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class HyphensTest {
  private static final Hyphens ENGLISH = new Hyphens(Locale.ENGLISH);

  private static String divided(Hyphens hyphens, String text) {
    StringBuilder out = new StringBuilder(text);
    int[] points = hyphens.points(text);
    for (int i = points.length - 1; i >= 0; i--) {
      out.insert(points[i], '-');
    }
    return out.toString();
  }

  @Test
  void theTitleWordsOfTheMethodsOwnPaperAreDividedAsThere() {
    // F. M. Liang, Word Hy-phen-a-tion by Com-put-er, Stanford 1983; a last single letter and two
    // letters before a hyphen are not left alone here
    assertEquals("hyphen-ation", divided(ENGLISH, "hyphenation"));
    assertEquals("com-puter", divided(ENGLISH, "computer"));
  }

  @Test
  void exceptionsOfThePatternFileHold() {
    assertEquals("present", divided(ENGLISH, "present"));
    assertEquals("recog-ni-zance", divided(ENGLISH, "recognizance"));
  }

  @Test
  void marksAroundAWordDoNotMatter() {
    assertEquals("(tomatil-los),", divided(ENGLISH, "(tomatillos),"));
    assertEquals("TOMATIL-LOS/TOMATIL-LOS", divided(ENGLISH, "TOMATILLOS/TOMATILLOS"));
    assertEquals("260824A-K", divided(ENGLISH, "260824A-K"));
  }

  @Test
  void spanishHasItsOwnPatternsAndOtherLanguagesNone() {
    assertEquals(
        "melo-co-to-nes", divided(new Hyphens(Locale.forLanguageTag("es")), "melocotones"));
    assertEquals("melocotones", divided(new Hyphens(Locale.forLanguageTag("fi")), "melocotones"));
  }

  /** The PDF library's implementation of the same method, over the same patterns. */
  @Test
  void anotherImplementationDividesAllWordsAlike() throws IOException {
    for (String language : List.of("en", "es")) {
      Hyphens ours = new Hyphens(Locale.forLanguageTag(language));
      HyphenationTree theirs = tree(language);
      List<String> words = words();
      assertEquals(true, words.size() > 300, "words to compare");
      for (String word : words) {
        Hyphenation found = theirs.hyphenate(word, 3, 3);
        int[] points = found == null ? new int[0] : found.getHyphenationPoints();
        assertArrayEquals(
            points,
            ours.points(word),
            word + ": " + divided(ours, word) + " " + Arrays.toString(points));
      }
    }
  }

  private static List<String> words() throws IOException {
    List<String> words = new ArrayList<>();
    for (String file : List.of("products.csv", "products_es.csv", "ingredients_es.csv")) {
      try (InputStream in = Hyphens.class.getResourceAsStream("/jarwright/process/" + file)) {
        String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        for (String word : text.split("[^a-záéíóúüñ]+")) {
          if (word.length() >= 6 && !words.contains(word)) {
            words.add(word);
          }
        }
      }
    }
    return words;
  }

  private static HyphenationTree tree(String language) throws IOException {
    StringBuilder xml =
        new StringBuilder(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<hyphenation-info><classes>");
    "abcdefghijklmnopqrstuvwxyzáéíóúüñ".chars().forEach(c -> xml.append((char) c).append('\n'));
    xml.append("</classes>");
    StringBuilder exceptions = new StringBuilder("<exceptions>");
    StringBuilder patterns = new StringBuilder("<patterns>");
    try (InputStream in = Hyphens.class.getResourceAsStream("hyphens-" + language + ".txt")) {
      String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      all.lines()
          .filter(line -> !line.startsWith("#"))
          .flatMap(line -> Arrays.stream(line.split(" ")))
          .forEach(
              word -> (word.matches(".*\\d.*") ? patterns : exceptions).append(word).append('\n'));
    }
    xml.append(exceptions).append("</exceptions>").append(patterns);
    xml.append("</patterns></hyphenation-info>");
    HyphenationTree tree = new HyphenationTree();
    tree.loadSimplePatterns(
        new ByteArrayInputStream(xml.toString().getBytes(StandardCharsets.UTF_8)));
    return tree;
  }
}
