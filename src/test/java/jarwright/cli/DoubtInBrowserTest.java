package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** A spoiled jar and its lot, told and looked over in a real browser. */
class DoubtInBrowserTest {
  @TempDir Path folder;
  @TempDir Path profile;
  private ServedHome home;
  private Chromium browser;

  @BeforeEach
  void open() throws Exception {
    browser = Chromium.start(profile);
    home = ServedHome.open(folder, false);
    show("03");
    WebElement code = form("/code");
    code.findElement(By.name("code")).sendKeys("1234 5678");
    send(code);
  }

  @AfterEach
  void close() {
    if (home != null) {
      home.close();
    }
    if (browser != null) {
      browser.close();
    }
  }

  private void show(String jar) {
    browser.show(home.address() + "/260824A-T/" + jar, Chromium.PHONE, false);
  }

  private WebElement form(String action) {
    WebElement form =
        browser.driver().findElement(By.cssSelector("form[action$='" + action + "']"));
    browser
        .driver()
        .executeScript("arguments[0].closest('details')?.setAttribute('open', '')", form);
    return form;
  }

  private void send(WebElement form) {
    browser.leaveBy(form.findElement(By.tagName("button")));
  }

  private void tick(WebElement form, String name, String value) {
    form.findElement(By.cssSelector("[name=" + name + "][value=" + value + "]")).click();
  }

  private void look(String leaks) {
    WebElement look = form("/check");
    for (String sign : List.of("bulges", "spurts", "smell", "mold", "color")) {
      tick(look, sign, "no");
    }
    tick(look, "leaks", leaks);
    send(look);
  }

  @Test
  void aJarIsReportedSpoiledAndTheOthersAreLookedOver() {
    WebElement spoiled = form("/spoiled");
    tick(spoiled, "mold", "yes");
    send(spoiled);
    assertTrue(browser.text().contains("Do not eat. Throw away."), browser.text());
    assertTrue(browser.text().contains("It was found spoiled on August 26, 2026: mold."), "why");
    show("04");
    assertTrue(browser.text().contains("Do not eat yet: another jar of this batch spoiled"));
    form("/check");
    form("/toss");
    form("/spoiled");
    assertEquals(List.of(), browser.faults(), "with its questions");
    assertFalse(browser.isTooWide());
    look("no");
    assertTrue(browser.text().contains("OK to use by"), browser.text());
    show("06");
    look("yes");
    assertTrue(browser.text().contains("Do not eat. Throw away."), browser.text());
    show("04");
    assertTrue(browser.text().contains("Do not eat yet"), "looked over before that was known");
  }

  /** The browser itself does not send a look with a question left open. */
  @Test
  void aQuestionLeftOpenIsNotSent() throws Exception {
    home.run("trace", "260824A-T/01", "--spoiled", "leaks");
    show("04");
    String before = home.ledger();
    WebElement look = form("/check");
    tick(look, "leaks", "no");
    look.findElement(By.tagName("button")).click();
    assertEquals(before, home.ledger());
    assertTrue(
        (Boolean) browser.driver().executeScript("return !arguments[0].checkValidity()", look));
  }
}
