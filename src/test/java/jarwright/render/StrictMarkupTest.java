package jarwright.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import jarwright.page.PaperSize;
import jarwright.page.PrintFault;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a user who changes templates is told, word for word. */
class StrictMarkupTest {

  private static void assertTold(String message, String template) {
    PrintFault fault =
        assertThrows(
            PrintFault.class, () -> Prints.pdf(template, Map.of("n", 3), PaperSize.LETTER));
    assertEquals(message, fault.getMessage());
  }

  private static void assertBodyTold(String message, String body) {
    assertTold(message, "<sheet>\n<section><body>\n" + body + "\n</body></section>\n</sheet>");
  }

  @Test
  void anUnknownElementIsToldWithThoseThatMayStandThere() {
    assertTold(
        "t.ftl:2: <page> may not stand in <sheet>; there may be section, fit, labels",
        "<sheet>\n<page/></sheet>");
    assertBodyTold(
        "t.ftl:3: <para> may not stand in <steps>; there may be step",
        "<steps><para>x</para></steps>");
    assertBodyTold(
        "t.ftl:3: <stepp> may not stand in <body>; there may be break, caution, columns, drawing,"
            + " fields, group, heading, marks, panel, para, readings, rule, space, steps, table,"
            + " and among words b, span, figure, frac, keep, br, blank, box, sign, page, pages",
        "<stepp/>");
    assertBodyTold(
        "t.ftl:3: <rule> may not stand among the words of <para>; there may be b, span, figure,"
            + " frac, keep, br, blank, box, sign, page, pages",
        "<para>x <rule/></para>");
    assertBodyTold(
        "t.ftl:3: <para> may not stand in <drawing>; there may be rect, circle, line, polygon, arc,"
            + " text, sign, qr, picture",
        "<drawing w=\"9\" h=\"9\" alt=\"\"><para/></drawing>");
  }

  @Test
  void anUnknownAttributeIsToldWithThoseThereAre() {
    assertBodyTold(
        "t.ftl:3: <space> has no attribute \"hight\"; it may have h, keep",
        "<space h=\"2\" hight=\"3\"/>");
    assertBodyTold("t.ftl:3: <b> has no attribute \"x\"; it has none", "<b x=\"1\">x</b>");
  }

  @Test
  void aMissingAttributeIsTold() {
    assertBodyTold("t.ftl:3: <space> needs the attribute \"h\"", "<space/>");
    assertBodyTold("t.ftl:3: <sign> needs the attribute \"name\"", "a <sign/>");
    assertBodyTold("t.ftl:3: <table> needs the attribute \"columns\"", "<table></table>");
  }

  @Test
  void aBadValueIsToldWithWhatItMustBe() {
    assertBodyTold("t.ftl:3: <space h=\"tall\">: it must be a number", "<space h=\"tall\"/>");
    assertBodyTold("t.ftl:3: <space h=\"NaN\">: it must be a number", "<space h=\"NaN\"/>");
    assertBodyTold(
        "t.ftl:3: <rule line=\"0.2\">: it must be 0 or a line weight from 0.5 to 60 pt",
        "<rule line=\"0.2\"/>");
    assertBodyTold(
        "t.ftl:3: <para size=\"5\">: it must be a type size from 6 to 400 pt",
        "<para size=\"5\">x</para>");
    assertBodyTold(
        "t.ftl:3: <para align=\"middle\">: it must be one of left, center, right",
        "<para align=\"middle\">x</para>");
    assertBodyTold(
        "t.ftl:3: <para b=\"true\">: it must be one of yes, no", "<para b=\"true\">x</para>");
    assertBodyTold(
        "t.ftl:3: <para ink=\"blu\">: it must be black, white, accent, a share of black as 15%, or"
            + " #rrggbb",
        "<para ink=\"blu\">x</para>");
    assertBodyTold(
        "t.ftl:3: <heading level=\"4\">: it must be a whole number from 1 to 3",
        "<heading level=\"4\">x</heading>");
    assertBodyTold(
        "t.ftl:3: <table columns=\"x*\">: it must be widths in mm or shares as 25 * 2*",
        "<table columns=\"10 x*\"/>");
  }

  @Test
  void whatDoesNotAddUpIsTold() {
    assertBodyTold(
        "t.ftl:3: this <row> fills 1 columns; its table has 2",
        "<table columns=\"* *\"><row><cell>x</cell></row></table>");
    assertBodyTold(
        "t.ftl:3: <columns> names 2 widths for 1 columns",
        "<columns widths=\"* *\"><column>x</column></columns>");
    assertBodyTold("t.ftl:3: <marks> needs either a count or labels", "<marks/>");
    assertBodyTold(
        "t.ftl:3: a heading of level 3 stands under none one level up",
        "<heading level=\"1\">a</heading><heading level=\"3\">b</heading>");
    assertBodyTold(
        "t.ftl:3: <break> may stand in <body> only, not inside <panel>", "<panel><break/></panel>");
    assertTold("t.ftl:1: a <section> needs a <body>", "<sheet><section/></sheet>");
    assertTold(
        "t.ftl:1: a <sheet> needs at least one <section>, <fit> or <labels>", "<sheet></sheet>");
    assertTold("t.ftl:1: a sheet begins with <sheet>, not with <page>", "<page/>");
  }

  @Test
  void wordsWhereNoneMayStandAreTold() {
    assertBodyTold(
        "t.ftl:3: words may not stand directly in <steps>: \"Wash the jars\"",
        "<steps>Wash\n the jars</steps>");
  }

  @Test
  void brokenXmlIsToldWithItsLine() {
    assertTold(
        "t.ftl:2: the sheet is not well-formed XML: The element type \"section\" must be terminated"
            + " by the matching end-tag \"</section>\".",
        "<sheet><section>\n</sheet>");
  }

  @Test
  void aSheetReachesNothingOutside() {
    assertTold(
        "t.ftl:1: a sheet has no DTD and no entities of its own",
        "<!DOCTYPE sheet [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><sheet>&x;</sheet>");
  }

  @Test
  void theLineIsTheTemplatesOwnThoughLoopsAndMacrosWroteIt() {
    String template =
        """
        <#macro jar n>
          <para>Jar ${n}</para>
          <#if n == 2>
            <space h="none"/>
          </#if>
        </#macro>
        <sheet>
          <section>
            <body>
              <#list 1..n as i>
                <@jar n=i/>
              </#list>
            </body>
          </section>
        </sheet>
        """;
    assertTold("t.ftl:4: <space h=\"none\">: it must be a number", template);
  }

  @Test
  void theTemplateLanguagesOwnMistakesAreToldInOneSentence() {
    assertTold(
        "t.ftl:2:3: there is no value jars; check its spelling, or give a default as"
            + " ${jars!\"none\"}",
        "<sheet>\n${jars}</sheet>");
    assertTold(
        "t.ftl:1:12: the template cannot be read: Unknown built-in: \"shout\"",
        "<sheet>${n?shout}</sheet>");
    assertTold(
        "t.ftl:1:10: no text \"good-bye\" in language en", "<sheet>${word(\"good-bye\")}</sheet>");
    assertTold(
        "t.ftl:1:10: text \"hello\" wants a value for {name}", "<sheet>${word(\"hello\")}</sheet>");
    assertTold(
        "t.ftl:1:10: \"24.8.2026\" is no date like 2026-08-24",
        "<sheet>${day(\"iso\", \"24.8.2026\")}</sheet>");
  }

  @Test
  void aCharacterWithoutAGlyphIsToldNotPrintedAsABox() {
    assertBodyTold(
        "t.ftl:4: the typeface cannot print \"梅\" (U+6885) in \"Plums 梅\"; write it in other"
            + " letters",
        "<heading>x</heading>\n<para>Plums 梅</para>");
    assertBodyTold(
        "t.ftl:3: the typeface cannot print \"😀\" (U+1F600) in \"Plums 😀\"; write it in other"
            + " letters",
        "<para>Plums 😀</para>");
    assertBodyTold(
        "t.ftl:3: the typeface cannot print \"ש\" (U+05E9) in \"שזיף\"; write it in other letters",
        "<para>שזיף</para>");
  }

  @Test
  void whatIsTooLargeIsToldWithItsMeasures() {
    assertBodyTold(
        "t.ftl:3: <drawing> does not fit: it needs 300.0 mm and has 191.9 mm",
        "<drawing w=\"300\" h=\"9\" alt=\"\"/>");
    assertBodyTold(
        "t.ftl:3: <drawing> does not fit: it needs 300.0 mm and has 255.4 mm",
        "<drawing w=\"9\" h=\"300\" alt=\"\"/>");
    assertBodyTold(
        "t.ftl:3: <table> columns does not fit: it needs 210.0 mm and has 191.9 mm",
        "<table columns=\"100 110\"><row><cell/><cell/></row></table>");
    assertBodyTold(
        "t.ftl:3: <field> does not fit: it needs 250.0 mm and has 191.9 mm",
        "<fields><field w=\"250\"/></fields>");
  }
}
