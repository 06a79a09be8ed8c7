package jarwright.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.page.DoesNotFit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FlowTest {

  private static String lines(int n, String words) {
    return IntStream.rangeClosed(1, n)
        .mapToObj(i -> "<para>" + words + " " + i + "</para>")
        .collect(Collectors.joining());
  }

  private static List<String> section(String head, String body) {
    return Prints.pages(
        Prints.pdf("<sheet><section>" + head + "<body>" + body + "</body></section></sheet>"));
  }

  /** "12.75 L" that ends its line after "12" would be another amount of water. */
  @Test
  void aFigureIsNeverCutInTwo() {
    int printed = 0;
    for (int width = 30; width <= 90; width++) {
      String body =
          "<columns widths=\""
              + width
              + " *\"><column><steps box=\"7\"><step figure=\"13-1/2 quarts\""
              + " also=\"12.75\u00a0L, 14.5\u00a0cm\u00a0deep\"><para>Put in water</para></step></steps>"
              + "</column><column/></columns>";
      try {
        String words = String.join(" ", section("", body)).replace('\u00a0', ' ');
        for (String whole : List.of("quarts", "12.75 L,", "14.5 cm deep")) {
          assertTrue(words.contains(whole), width + " mm: " + words);
        }
        printed++;
      } catch (DoesNotFit tooNarrow) {
        assertTrue(tooNarrow.getMessage().startsWith("t.ftl:1: <step> does not fit: it needs "));
      }
    }
    assertTrue(printed > 30, printed + " widths");
  }

  @Test
  void everySideSaysWhichOfHowManyItIs() {
    List<String> pages =
        section(
            "<header>Plums</header><footer>page <page/> of <pages/></footer>", lines(120, "line"));
    assertTrue(pages.size() >= 3, "several sides");
    for (int i = 0; i < pages.size(); i++) {
      assertTrue(pages.get(i).startsWith("Plums\n"), pages.get(i));
      assertTrue(pages.get(i).endsWith("page " + (i + 1) + " of " + pages.size()), pages.get(i));
    }
  }

  @Test
  void eachSectionCountsItsOwnSides() {
    String section = "<section><footer><page/>/<pages/></footer><body>a<break/>b</body></section>";
    List<String> pages = Prints.pages(Prints.pdf("<sheet>" + section + section + "</sheet>"));
    assertEquals(List.of("a\n1/2", "b\n2/2", "a\n1/2", "b\n2/2"), pages);
  }

  private static List<String> fit(String... bodies) {
    String sections =
        Stream.of(bodies)
            .map(b -> "<section><footer><page/>/<pages/></footer><body>" + b + "</body></section>")
            .collect(Collectors.joining());
    return Prints.pages(Prints.pdf("<sheet><fit sides=\"2\">" + sections + "</fit></sheet>"));
  }

  @Test
  void theFirstWayThatKeepsToTheSidesIsDrawnAndNoOther() {
    assertEquals(List.of("a\n1/1"), fit("a", "b"));
    assertEquals(List.of("b\n1/2", "b\n2/2"), fit("a<break/>a<break/>a", "b<break/>b", "c"));
  }

  @Test
  void ifNoWayKeepsToTheSidesTheFirstOfTheShortestIsDrawn() {
    List<String> pages =
        fit("a<break/>a<break/>a<break/>a", "b<break/>b<break/>b", "c<break/>c<break/>c");
    assertEquals(List.of("b\n1/3", "b\n2/3", "b\n3/3"), pages);
  }

  /** As measured, so drawn: a long text takes so many sides either way. */
  @Test
  void aWayIsMeasuredAsItIsDrawn() {
    for (int lines = 60; lines < 130; lines++) {
      int alone = section("<footer><page/></footer>", lines(lines, "line")).size();
      List<String> pages = fit(lines(lines, "line"), lines(1, "short"));
      assertEquals(alone <= 2 ? alone : 1, pages.size(), lines + " lines");
    }
  }

  @Test
  void theFirstSideMayHaveAHeaderOfItsOwn() {
    String heads = "<header on=\"first\">one</header><header on=\"others\">more</header>";
    assertEquals(List.of("one\na", "more\nb"), section(heads, "a<break/>b"));
    assertEquals(
        List.of("one\na", "b"), section("<header on=\"first\">one</header>", "a<break/>b"));
  }

  @Test
  void aSectionCanBeginOnTheFrontOfASheet() {
    String section = "<section starts=\"sheet\"><body>a</body></section>";
    List<String> pages = Prints.pages(Prints.pdf("<sheet>" + section + section + "</sheet>"));
    assertEquals(List.of("a", "", "a"), pages);
  }

  @Test
  void aBreakToASheetLeavesTheBackEmptyButNumbered() {
    List<String> pages = section("<footer><page/> of <pages/></footer>", "a<break to=\"sheet\"/>b");
    assertEquals(List.of("a\n1 of 3", "2 of 3", "b\n3 of 3"), pages);
  }

  @Test
  void aHeadingIsNeverTheLastOnItsSide() {
    for (int n = 30; n < 60; n++) {
      String body =
          lines(n, "line")
              + "<heading>Headed</heading><rule keep=\"yes\"/><heading level=\"2\">Under</heading>"
              + lines(9, "tail");
      for (String page : section("", body)) {
        assertFalse(page.endsWith("Headed") || page.endsWith("Under"), "after " + n + ": " + page);
      }
    }
  }

  @Test
  void whatIsKeptTogetherIsOnOneSide() {
    for (int n = 30; n < 60; n++) {
      String body = lines(n, "line") + "<group>" + lines(5, "kept") + "</group>";
      long sides = section("", body).stream().filter(page -> page.contains("kept")).count();
      assertEquals(1, sides, "after " + n);
    }
  }

  @Test
  void aLongParagraphRunsOverWithTwoLinesAtLeastOnEachSide() {
    String words = "lorem ipsum dolor sit amet ".repeat(30);
    for (int n = 30; n < 60; n++) {
      List<String> pages =
          section("", lines(n, "line") + "<para>" + words + "</para><para>end</para>");
      for (String page : pages) {
        long run =
            page.lines().filter(line -> line.matches("(lorem|ipsum|dolor|sit|amet).*")).count();
        assertTrue(run != 1, "after " + n + ": one line alone");
      }
    }
  }

  @Test
  void aTablesHeadStandsOnEverySideAndGroupsStayWhole() {
    String rows =
        IntStream.rangeClosed(1, 60)
            .mapToObj(
                i ->
                    "<group><row><cell>lot "
                        + i
                        + "</cell><cell>first</cell></row><row><cell>again "
                        + i
                        + "</cell><cell>second</cell></row></group>")
            .collect(Collectors.joining());
    List<String> pages =
        section(
            "",
            "<table columns=\"30 *\"><head><cell>Lot</cell><cell>Which</cell></head>"
                + rows
                + "</table>");
    assertTrue(pages.size() >= 3, "several sides");
    for (String page : pages) {
      assertTrue(page.startsWith("Lot Which\n"), page);
      assertTrue(page.endsWith("second"), page);
    }
  }

  @Test
  void columnsFillOneAfterTheOther() {
    List<String> pages =
        Prints.pages(
            Prints.pdf(
                "<sheet><section columns=\"2\"><body>"
                    + lines(60, "line")
                    + "</body></section></sheet>"));
    assertEquals(1, pages.size());
    assertTrue(pages.get(0).lines().findFirst().orElse("").matches("line 1 line \\d+"));
  }

  @Test
  void stepsBreakBetweenSidesButNotInside() {
    String steps =
        IntStream.rangeClosed(1, 40)
            .mapToObj(i -> "<step>begin " + i + "<para>end " + i + "</para></step>")
            .collect(Collectors.joining());
    List<String> pages = section("", "<steps box=\"7\" numbered=\"yes\">" + steps + "</steps>");
    assertTrue(pages.size() >= 2, "several sides");
    for (String page : pages) {
      assertTrue(page.lines().findFirst().orElse("").contains("begin"), page);
      assertTrue(page.contains("end " + page.replaceAll("(?s).*begin (\\d+).*", "$1")), page);
    }
  }

  @Test
  void aSumOfMeasuresIsDividedOnlyBetweenThem() {
    String sum = IntStream.range(0, 24).mapToObj(i -> "3/4 cup").collect(Collectors.joining(" + "));
    String page = section("", "<steps><step figure=\"" + sum + "\">Set out</step></steps>").get(0);
    List<String> lines = page.lines().filter(l -> l.contains("cup")).toList();
    assertTrue(lines.size() > 1, page);
    for (String line : lines) {
      assertTrue(line.matches("(3\u20444 cup( \\+ ?)?)+"), line);
    }
  }
}
