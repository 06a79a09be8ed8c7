package jarwright.render;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.page.PaperSize;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;

/** The file around the pages. */
class DocumentTest {

  private static byte[] every() {
    return Prints.pdf(Prints.TEMPLATES, "every-element.ftl", Map.of(), PaperSize.LETTER);
  }

  @Test
  void theSameSheetGivesTheSameBytesInAnyCountryAndTimeZone() {
    byte[] here = every();
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr"));
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
      assertArrayEquals(here, every());
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("America/St_Johns"));
      assertArrayEquals(here, every());
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void whatWasPrintedBeforeDoesNotShowInTheBytes() throws IOException {
    Printer printer = new Printer(java.util.Optional.of(Prints.TEMPLATES));
    List<byte[]> prints = new ArrayList<>();
    for (String template : List.of("every-element.ftl", "plain.ftl", "every-element.ftl")) {
      var out = new java.io.ByteArrayOutputStream();
      printer.pdf(Prints.sheet(template, Map.of(), PaperSize.LETTER), out);
      prints.add(out.toByteArray());
    }
    assertArrayEquals(prints.get(0), prints.get(2));
    assertArrayEquals(
        Prints.pdf(Prints.TEMPLATES, "plain.ftl", Map.of(), PaperSize.LETTER), prints.get(1));
  }

  @Test
  void anotherSheetHasAnotherIdentifier() throws IOException {
    try (PDDocument one = Prints.read(Prints.body("Plums"));
        PDDocument other = Prints.read(Prints.body("Pears"))) {
      assertNotEquals(
          one.getDocument().getDocumentID().getString(0),
          other.getDocument().getDocumentID().getString(0));
    }
  }

  @Test
  void titleLanguageAndDatesAreSet() throws IOException {
    try (PDDocument document = Prints.read(Prints.body("Plums"))) {
      var info = document.getDocumentInformation();
      assertEquals("A test & its title", info.getTitle());
      assertEquals("Jars", info.getSubject());
      assertEquals("jar, lot", info.getKeywords());
      assertEquals("D:20260824000000Z", info.getCOSObject().getString(COSName.CREATION_DATE));
      var catalog = document.getDocumentCatalog();
      assertEquals("en", catalog.getLanguage());
      assertTrue(catalog.getViewerPreferences().displayDocTitle());
      assertTrue(catalog.getMarkInfo().isMarked());
      String xmp = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
      assertTrue(xmp.contains("A test &amp; its title"), xmp);
      assertTrue(xmp.contains("<xmp:CreateDate>2026-08-24T00:00:00Z</xmp:CreateDate>"), xmp);
    }
  }

  @Test
  void headingsAreListedInTheOutlineByLevel() throws IOException {
    String body =
        "<heading>A</heading><heading level=\"2\">B</heading><heading level=\"3\">C</heading>"
            + "<heading level=\"2\" bookmark=\"Dee\">D</heading><heading>E</heading>";
    try (PDDocument document = Prints.read(Prints.body(body))) {
      List<String> titles = new ArrayList<>();
      list(document.getDocumentCatalog().getDocumentOutline().children(), "", titles);
      assertEquals(List.of("A", ".B", "..C", ".Dee", "E"), titles);
    }
  }

  private static void list(Iterable<PDOutlineItem> items, String depth, List<String> titles) {
    for (PDOutlineItem item : items) {
      titles.add(depth + item.getTitle());
      list(item.children(), depth + ".", titles);
    }
  }

  @Test
  void allWordsAreInEmbeddedSubsetsOfTheHousesTypeface() throws IOException {
    try (PDDocument document = Prints.read(every())) {
      int fonts = 0;
      for (PDPage page : document.getPages()) {
        fonts += check(page.getResources());
      }
      assertTrue(fonts >= 4, "fonts seen");
    }
  }

  private static int check(PDResources resources) throws IOException {
    int fonts = 0;
    for (COSName name : resources.getFontNames()) {
      PDFont font = resources.getFont(name);
      assertTrue(font.isEmbedded(), font.getName());
      assertTrue(font.getName().matches("[A-Z]{6}\\+.*"), font.getName());
      fonts++;
    }
    for (COSName name : resources.getXObjectNames()) {
      if (resources.getXObject(name) instanceof PDFormXObject form && form.getResources() != null) {
        fonts += check(form.getResources());
      }
    }
    return fonts;
  }

  @Test
  void onlyTheFacesUsedAreEmbedded() throws IOException {
    assertEquals(1, faces(Prints.body("Plums")));
    assertEquals(2, faces(Prints.body("Plums <b>and</b> pears")));
  }

  private static int faces(byte[] pdf) throws IOException {
    try (PDDocument document = Prints.read(pdf)) {
      int faces = 0;
      for (COSName name : document.getPage(0).getResources().getFontNames()) {
        assertFalse(name.getName().isEmpty());
        faces++;
      }
      return faces;
    }
  }

  @Test
  void aPreviewHasAPictureOfEachPage() throws IOException {
    List<String> sizes = new ArrayList<>();
    byte[] pdf =
        Prints.pdf(
            "<sheet><section><body>a<break/>b</body></section><section turned=\"yes\"><body>c"
                + "</body></section></sheet>");
    Preview.draw(
        pdf,
        72,
        (page, png) -> {
          var picture = javax.imageio.ImageIO.read(new java.io.ByteArrayInputStream(png));
          sizes.add(page + ": " + picture.getWidth() + " × " + picture.getHeight());
        });
    assertEquals(List.of("1: 612 × 792", "2: 612 × 792", "3: 792 × 612"), sizes);
  }

  @Test
  void theWordsOfALanguageAreReadWhole() {
    var words = WordBundle.load("en");
    assertEquals("en", words.language());
    assertEquals("2026-08-24", words.date("iso", java.time.LocalDate.of(2026, 8, 24)));
    var e =
        org.junit.jupiter.api.Assertions.assertThrows(
            IllegalArgumentException.class, () -> WordBundle.load("xx"));
    assertEquals(
        "language \"xx\"; there are " + String.join(", ", WordBundle.LANGUAGES), e.getMessage());
  }
}
