package jarwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The site as it lies in its folder. */
class PagesTest {
  private static final Pattern HREF = Pattern.compile("href=\"([^\"]*)\"");

  @TempDir Path folder;
  private Household house;

  @BeforeEach
  void withKit() throws Exception {
    house = Household.withKit(folder);
  }

  private Map<String, byte[]> site(String name) throws IOException {
    assertEquals(0, house.run("pages", "-o", name), house.told());
    Map<String, byte[]> files = new TreeMap<>();
    Path root = house.file(name);
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(root.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }

  /** An index, a page for each of 3 lots and for each of 14, 9 and 9 jars. */
  @Test
  void eachLotAndJarHasAPage() throws Exception {
    Map<String, byte[]> site = site("site");
    assertEquals(1 + 3 + 14 + 9 + 9, site.size(), site.keySet().toString());
    assertTrue(site.containsKey("260824A-T/14/USE-BY-2027-08-24/index.html"));
  }

  @Test
  void theSameLedgerGivesTheSameBytes() throws Exception {
    Map<String, byte[]> one = site("one");
    Map<String, byte[]> other = site("other");
    assertEquals(one.keySet(), other.keySet());
    one.forEach((name, bytes) -> assertArrayEquals(bytes, other.get(name), name));
  }

  /** Every link leads to a page of the site or to a part of its own page; nothing leads out. */
  @Test
  void noLinkLeadsNowhere() throws Exception {
    Map<String, byte[]> site = site("site");
    for (Map.Entry<String, byte[]> page : site.entrySet()) {
      String html = new String(page.getValue(), UTF_8);
      Matcher href = HREF.matcher(html);
      while (href.find()) {
        String to = href.group(1);
        if (to.startsWith("#")) {
          assertTrue(html.contains("id=\"" + to.substring(1) + "\""), page.getKey() + " " + to);
        } else if (!to.equals("data:,")) {
          String name = URI.create(page.getKey()).resolve(to).toString();
          assertTrue(site.containsKey(name), page.getKey() + " leads to " + name);
        }
      }
    }
  }

  /** A page that nothing renews would go on calling its jar good. */
  @Test
  void pagesOfAnEarlierRunThatAreLeftAreTold() throws Exception {
    site("site");
    assertFalse(house.told().contains("older page"), house.told());
    Path old = house.file("site/250701A-C/01/USE-BY-2026-07-01/index.html");
    Files.createDirectories(old.getParent());
    Files.writeString(old, "Good until");
    Path own = house.file("site/album/index.html");
    Files.createDirectories(own.getParent());
    Files.writeString(own, "of the household's own");
    site("site");
    assertTrue(house.told().contains("older page") && house.told().contains("250701A-C"));
    assertFalse(house.told().contains("album"), house.told());
    assertTrue(Files.exists(old), "never deleted by the program");
  }

  @Test
  void aDamagedLedgerGivesNoPages() throws Exception {
    Path ledger = house.file("pantry/ledger.csv");
    Files.writeString(ledger, Files.readString(ledger).replace("cellar B3", "cellar B4"));
    assertEquals(1, house.run("pages", "-o", "site"), house.told());
    assertFalse(Files.exists(house.file("site")));
  }

  @Test
  void wrongUsageIsTold() {
    for (List<String> args : List.of(List.of("pages", "extra"), List.of("pages", "--lan"))) {
      assertEquals(2, house.run(args.toArray(String[]::new)), house.told());
    }
  }
}
