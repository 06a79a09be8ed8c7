package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.WebElement;

/** The pages in a real browser: Debian's Chromium. */
class PagesInBrowserTest {
  private static final Dimension NARROW = new Dimension(320, 640);
  private static final Dimension WINDOW = new Dimension(1_200, 900);

  @TempDir static Path folder;
  @TempDir static Path profile;
  private static ServedHome home;
  private static Chromium browser;
  private static Path site;

  @BeforeAll
  static void open() throws Exception {
    browser = Chromium.start(profile);
    home = ServedHome.open(folder, false, ServedHome.linkedPlan());
    home.run("pages", "-o", "site", "-q");
    site = folder.resolve("site");
  }

  @AfterAll
  static void close() {
    if (home != null) {
      home.close();
    }
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void asAStranger() {
    browser.driver().executeCdpCommand("Network.clearBrowserCookies", Map.of());
  }

  private void open(String path) {
    browser.show(home.address() + path, Chromium.PHONE, false);
  }

  private void press(String form, String... fieldsAndTexts) {
    WebElement in = browser.driver().findElement(By.cssSelector("form[action$='" + form + "']"));
    browser.driver().executeScript("arguments[0].closest('details')?.setAttribute('open', '')", in);
    for (int i = 0; i < fieldsAndTexts.length; i += 2) {
      in.findElement(By.name(fieldsAndTexts[i])).sendKeys(fieldsAndTexts[i + 1]);
    }
    browser.leaveBy(in.findElement(By.tagName("button")));
  }

  private void giveTheCode() {
    press("/code", "code", "1234 5678");
  }

  @Test
  void theAddressInACodeLeadsToItsJar() throws Exception {
    String code =
        home.codes().stream().filter(c -> c.contains("/260824A-T/03/")).findFirst().orElseThrow();
    open(URI.create(code).getPath());
    String text = browser.text();
    assertTrue(text.contains("Plums"), text);
    assertTrue(text.contains("OK to use by August 24, 2027"), text);
    assertTrue(text.contains("30 min"), text);
    assertTrue(text.contains("AIB 539 (2015) p. 2-22"), text);
  }

  @Test
  void aJarIsTakenWithTheCode() throws Exception {
    open("/260824A-T/08");
    assertTrue(browser.text().contains("give the household code"), browser.text());
    giveTheCode();
    press("/take", "note", "pie", "by", "Aino");
    assertTrue(browser.text().contains("Taken"), browser.text());
    assertFalse(browser.text().contains("OK to use by"), browser.text());
    assertTrue(home.ledger().contains("Aino"));
  }

  @Test
  void aWrongCodeRecordsNothingAndSaysSo() throws Exception {
    String before = home.ledger();
    open("/260824A-T/09");
    press("/code", "code", "0000 0000");
    assertTrue(browser.text().contains("not the household code"), browser.text());
    open("/260824A-T/09");
    assertTrue(browser.driver().findElements(By.cssSelector("form[action$='/take']")).isEmpty());
    assertEquals(before, home.ledger());
  }

  @Test
  void aJarIsMovedToAShelfThatIsTyped() throws Exception {
    open("/260824A-T/10");
    giveTheCode();
    press("/move", "to", "pantry C1");
    assertTrue(browser.text().contains("pantry C1"), browser.text());
  }

  /** Every kind of page, on a phone and in a window, light and dark: WCAG 2.2, A and AA. */
  @Test
  void everyPageCanBeReadByEveryone() {
    List<String> pages =
        List.of(
            "/",
            "/260824A-T",
            "/260824A-T/03",
            "/260824A-T/05",
            "/260824B-R/01",
            "/nowhere",
            "/code",
            "/260824A-X/01",
            "/250701A-C/07/USE-BY-2026-07-01");
    for (boolean dark : List.of(false, true)) {
      for (String page : pages) {
        browser.show(home.address() + page, Chromium.PHONE, dark);
        assertEquals(List.of(), browser.faults(), page + (dark ? " dark" : ""));
        assertFalse(browser.isTooWide(), page);
      }
      browser.show(home.address() + "/260824A-T", NARROW, dark);
      assertFalse(browser.isTooWide(), "reflow at 320 pixels: WCAG 2.2, 1.4.10");
      browser.show(home.address() + "/", WINDOW, dark);
      assertEquals(List.of(), browser.faults());
    }
    open("/260824A-T/11");
    giveTheCode();
    assertEquals(List.of(), browser.faults(), "with its forms");
    for (String file : List.of("index.html", "260824A-T/index.html")) {
      browser.show(site.resolve(file).toUri().toString(), Chromium.PHONE, false);
      assertEquals(List.of(), browser.faults(), file);
    }
  }

  @Test
  void theSiteOpensFromAFolderAndIsSearchedByTyping() {
    browser.show(site.resolve("index.html").toUri().toString(), Chromium.PHONE, false);
    WebElement field = browser.driver().findElement(By.cssSelector("input[type=search]"));
    assertTrue(browser.text().contains("Tomatoes"), browser.text());
    field.sendKeys("plum");
    String left = String.join(" ", rows());
    assertTrue(left.contains("Plums") && !left.contains("Tomatoes"), left);
    field.clear();
    field.sendKeys("cellar b4");
    assertTrue(String.join(" ", rows()).contains("Tomatoes"), String.join(" ", rows()));
    browser.driver().findElement(By.partialLinkText("Tomatoes")).click();
    assertTrue(browser.driver().getCurrentUrl().startsWith("file:"), "no server");
    assertTrue(browser.text().contains("AIB 539"), browser.text());
  }

  /**
   * A phone's camera app gives the code's words or address to copy; the list finds the jar by it.
   */
  @Test
  void theWordsOfACodeFindItsJar() {
    browser.show(site.resolve("index.html").toUri().toString(), Chromium.PHONE, false);
    WebElement field = browser.driver().findElement(By.cssSelector("input[type=search]"));
    for (String code :
        List.of(
            "LOT 260824A-T/03 USE BY 2027-08-24 PLUMS RAW QUART",
            "HTTP://PANTRY.LAN:8080/260824A-T/03/USE-BY-2027-08-24",
            "260824a-t/3")) {
      field.clear();
      field.sendKeys(code);
      assertEquals(List.of("03"), numbers(), code);
    }
    browser.leaveBy(browser.driver().findElement(By.linkText("03")));
    assertTrue(browser.text().contains("260824A-T/03"), browser.text());
    assertTrue(browser.text().contains("OK to use by"), browser.text());
    assertTrue(browser.text().contains("A copy made on August 26, 2026"), browser.text());
  }

  private List<String> numbers() {
    return rows().stream().filter(r -> r.matches("[0-9]+")).distinct().toList();
  }

  @Test
  void aSpanishHouseholdReadsSpanishPages() throws Exception {
    Path kitchen = home.pantry().resolve("kitchen.yaml");
    String english = Files.readString(Path.of("samples/kitchen.yaml"));
    Files.writeString(kitchen, english.replace("language: en", "language: es"));
    home.run("pages", "-o", "sitio", "-q");
    Files.delete(kitchen);
    for (String file : List.of("index.html", "260824A-T/03/USE-BY-2027-08-24/index.html")) {
      browser.show(folder.resolve("sitio").resolve(file).toUri().toString(), Chromium.PHONE, false);
      assertEquals("es", browser.driver().findElement(By.tagName("html")).getAttribute("lang"));
      assertTrue(browser.text().contains("Ciruelas"), browser.text());
      assertEquals(List.of(), browser.faults(), file);
    }
  }

  /** Paper is white also for who reads in the dark, and has no forms to fill in. */
  @Test
  void onPaperInkIsDarkAndFormsAreGone() {
    browser.print(home.address() + "/260824A-T/12");
    assertEquals(
        "rgb(20, 24, 27)",
        browser
            .driver()
            .findElement(By.tagName("body"))
            .getCssValue("color")
            .replace("rgba", "rgb")
            .replace(", 1)", ")"));
    assertFalse(browser.text().contains("Record what happened"), browser.text());
    assertTrue(browser.text().contains("OK to use by"), browser.text());
  }

  private List<String> rows() {
    return browser.driver().findElements(By.cssSelector("main a")).stream()
        .filter(WebElement::isDisplayed)
        .map(WebElement::getText)
        .toList();
  }

  @Test
  void nothingIsFetchedFromAnywhere() throws Exception {
    String page = Files.readString(site.resolve("260824A-T/index.html"));
    assertFalse(page.contains("http://") || page.contains("https://"), page);
    browser.show(site.resolve("index.html").toUri().toString(), Chromium.PHONE, false);
    assertEquals(
        0L,
        browser.driver().executeScript("return performance.getEntriesByType('resource').length"));
  }

  @Test
  void withoutScriptsEverythingCanStillBeRead() {
    browser
        .driver()
        .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      open("/");
      assertTrue(
          browser.driver().findElement(By.tagName("main")).getText().contains("Plums"), "the list");
      open("/260824A-T/03");
      assertTrue(
          browser.driver().findElement(By.tagName("main")).getText().contains("OK to use by"));
    } finally {
      browser
          .driver()
          .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }
}
