package jarwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** A real browser without a window. */
final class Chromium implements AutoCloseable {
  static final Dimension PHONE = new Dimension(390, 844);
  private static final Path BROWSER = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
  private static final String AXE = script();

  /** The success criteria of WCAG 2.2 on the levels A and AA, as the engine calls them. */
  private static final List<String> AXE_TAGS =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

  private final ChromeDriver driver;

  private Chromium(ChromeDriver driver) {
    this.driver = driver;
  }

  /** Held, so that it stays as it is set: the driver remarks on every browser newer than itself. */
  private static final Logger REMARKS = Logger.getLogger("org.openqa.selenium");

  static {
    REMARKS.setLevel(Level.SEVERE);
  }

  /** Under CI a missing browser fails the test; elsewhere it is passed over, and says why. */
  static Chromium start(Path profile) {
    boolean there = Files.isExecutable(BROWSER) && Files.isExecutable(DRIVER);
    if (!there && System.getenv("CI") == null) {
      Assumptions.abort("no Chromium: apt-get install chromium chromium-driver");
    }
    if (!there) {
      throw new AssertionError("Chromium must be there under CI: see .ci/run");
    }
    ChromeOptions options = new ChromeOptions();
    options.setBinary(BROWSER.toFile());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--disable-dev-shm-usage",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--lang=en",
        "--user-data-dir=" + profile);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(DRIVER.toFile())
            .usingAnyFreePort()
            .withSilent(true)
            .build();
    return new Chromium(new ChromeDriver(service, options));
  }

  ChromeDriver driver() {
    return driver;
  }

  /** As on a phone or in a window, and with the colours that the person has chosen. */
  void show(String address, Dimension size, boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of(
            "width",
            size.getWidth(),
            "height",
            size.getHeight(),
            "deviceScaleFactor",
            2,
            "mobile",
            size.getWidth() < 600));
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
    driver.get(address);
  }

  /** Text of the page as it is seen. */
  String text() {
    return String.valueOf(driver.executeScript("return document.body.innerText"));
  }

  /** Whether anything makes the page scroll sideways. */
  boolean isTooWide() {
    return (Boolean)
        driver.executeScript(
            "return document.documentElement.scrollWidth > document.documentElement.clientWidth");
  }

  /** What the accessibility engine finds wrong with the page, one line each. */
  List<?> faults() {
    driver.executeScript(AXE);
    return (List<?>)
        driver.executeAsyncScript(
            "const done = arguments[arguments.length - 1];"
                + "axe.run(document, {runOnly: {type: 'tag', values: arguments[0]}}).then("
                + "r => done(r.violations.map(v => v.id + ': ' + v.help + ': '"
                + " + v.nodes.map(n => n.html).join(' | '))),"
                + "e => done([String(e)]));",
            AXE_TAGS);
  }

  private static String script() {
    try (InputStream in = Chromium.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Override
  public void close() {
    driver.quit();
  }
}
