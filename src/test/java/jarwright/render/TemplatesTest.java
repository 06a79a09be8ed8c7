package jarwright.render;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.page.PaperSize;
import jarwright.page.Sheet;
import jarwright.page.TemplateFault;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemplatesTest {
  @TempDir Path folder;

  private String html(String template, Map<String, Object> view) throws IOException {
    Files.writeString(folder.resolve("t.html.ftl"), template);
    Sheet sheet = Prints.sheet("t.html.ftl", view, PaperSize.A4);
    return new String(new Printer(Optional.of(folder)).html(sheet), StandardCharsets.UTF_8);
  }

  private String fault(String template) {
    return assertThrows(TemplateFault.class, () -> html(template, Map.of())).getMessage();
  }

  @Test
  void aWebPageEscapesWhatItIsGiven() throws IOException {
    assertEquals(
        "<p>&lt;b&gt;Plums &amp; &quot;figs&quot;</p>",
        html("<p>${name}</p>", Map.of("name", "<b>Plums & \"figs\"")));
  }

  @Test
  void aSheetEscapesWhatItIsGiven() {
    Map<String, Object> view = Map.of("name", "<b>Plums & \"figs\"");
    String template = "<sheet><section><body>${name}</body></section></sheet>";
    assertEquals(
        List.of("<b>Plums & \"figs\""), Prints.pages(Prints.pdf(template, view, PaperSize.A4)));
  }

  @Test
  void numbersAreWrittenForMarkupWhateverTheCountry() throws IOException {
    assertEquals(
        "12345.678 1000000 true",
        html("${a} ${b} ${c}", Map.of("a", 12345.678, "b", 1_000_000, "c", true)));
  }

  @Test
  void theWordsAreFunctions() throws IOException {
    assertEquals(
        "Hello Ann en",
        html("${word(\"hello\", {\"name\": who})} ${language}", Map.of("who", "Ann")));
  }

  @Test
  void aValueNeverHidesAFunctionOrIsHiddenByOne() {
    Map<String, Object> view = Map.of("count", 3);
    var e = assertThrows(IllegalArgumentException.class, () -> html("", view));
    assertEquals(
        "a view has a value \"count\", which every template has as a function", e.getMessage());
  }

  @Test
  void anOwnTemplateGoesFirstAndTheOthersComeFromTheProgram() throws IOException {
    Files.writeString(
        folder.resolve("outer.html.ftl"),
        "<#include \"part.html.ftl\"> <#include \"page.css.ftl\">");
    Files.writeString(folder.resolve("part.html.ftl"), "mine");
    String page =
        new String(
            new Printer(Optional.of(folder))
                .html(Prints.sheet("outer.html.ftl", Map.of(), PaperSize.A4)),
            StandardCharsets.UTF_8);
    assertTrue(page.startsWith("mine "), page);
    assertTrue(page.length() > 100, page);
  }

  @Test
  void aTemplateReachesNoFileOutsideItsFolder() throws IOException {
    Files.writeString(folder.resolve("secret.txt"), "secret");
    Path inner = Files.createDirectory(folder.resolve("inner"));
    Files.writeString(inner.resolve("t.html.ftl"), "<#include \"../secret.txt\">");
    Sheet sheet = Prints.sheet("t.html.ftl", Map.of(), PaperSize.A4);
    Printer printer = new Printer(Optional.of(inner));
    assertEquals(
        "t.html.ftl:1:1: Template inclusion failed (for parameter value \"../secret.txt\")",
        assertThrows(TemplateFault.class, () -> printer.html(sheet)).getMessage());
  }

  @Test
  void aTemplateReachesNoJava() {
    assertEquals(
        "t.html.ftl:1:1: Instantiating freemarker.template.utility.Execute is not allowed in the"
            + " template for security reasons",
        fault("${\"freemarker.template.utility.Execute\"?new()(\"id\")}"));
    assertTrue(fault("${language?api.bytes}").contains("api"), "the api is off");
  }

  @Test
  void aTemplateLargerThanAnyIsTold() throws IOException {
    String large = "<#-- -->".repeat(37_501);
    String told = "t.html.ftl: the template is larger than 300 kB";
    assertTrue(fault(large).startsWith(told), () -> fault(large));
    Files.writeString(folder.resolve("large.ftl"), large);
    assertTrue(fault("<#include \"large.ftl\">").contains("larger than 300 kB"));
    assertEquals("", html(large.substring(8), Map.of()));
  }

  @Test
  void aMissingTemplateOrFolderIsTold() {
    Sheet sheet = Prints.sheet("none.ftl", Map.of(), PaperSize.A4);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertEquals(
        "none.ftl: there is no template of that name",
        assertThrows(TemplateFault.class, () -> new Printer(Optional.empty()).pdf(sheet, out))
            .getMessage());
    Path none = folder.resolve("none");
    assertEquals(
        none + ": there is no such folder of templates",
        assertThrows(TemplateFault.class, () -> new Printer(Optional.of(none)).pdf(sheet, out))
            .getMessage());
    assertEquals(0, out.size());
  }

  @Test
  void aFaultBeforeTheFirstPageWritesNothing() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Sheet sheet = Prints.sheet("none.ftl", Map.of(), PaperSize.A4);
    assertThrows(TemplateFault.class, () -> new Printer(Optional.of(folder)).pdf(sheet, out));
    assertArrayEquals(new byte[0], out.toByteArray());
  }
}
