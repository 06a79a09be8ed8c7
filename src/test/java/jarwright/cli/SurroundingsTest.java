package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A year with the jars where the locale is another, and where the clock was set back. */
class SurroundingsTest {
  private static final List<String> YEAR =
      List.of(
          seal("260824A-T", 1),
          seal("260824A-T", 2),
          "take plums --note one",
          "move 260824A-T/02..04 --to attic",
          "toss 260824A-T/05 --why cracked",
          "shelf",
          "shelf --format csv",
          "shelf --format json",
          "shelf --year --format csv",
          "shelf --year -o year.pdf",
          "shelf -o shelf.pdf",
          "labels 260824A-T -o labels.pdf",
          "trace 260824A-T/02",
          "process --format json raw plums quart",
          "stock --format csv",
          "pages -o pages",
          "undo");

  @TempDir private Path temp;

  private static String seal(String lot, int load) {
    return "seal "
        + lot
        + " --load "
        + load
        + " --start 04:42 --end 05:27 --kept yes --cloudy no --sealed all";
  }

  private String year(String name) throws IOException {
    Household house =
        Household.withKit(Files.createDirectory(temp.resolve(name)))
            .at("2026-08-24T18:00:00-05:00");
    StringBuilder said = new StringBuilder();
    for (String words : YEAR) {
      assertEquals(0, house.run(words.split(" ")), () -> words + ": " + house.told());
      said.append(house.said()).append(house.told());
    }
    return said.toString().replace(temp.resolve(name).toString(), "");
  }

  /** Each file but the ledger, whose first line names the household by chance. */
  private Map<String, String> files(String name) throws IOException {
    Map<String, String> files = new TreeMap<>();
    Path folder = temp.resolve(name);
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String text = Files.readString(file, StandardCharsets.ISO_8859_1);
        boolean isLedger = file.endsWith("ledger.csv");
        files.put(folder.relativize(file).toString(), isLedger ? withoutChance(text) : text);
      }
    }
    return files;
  }

  private static String withoutChance(String ledger) {
    return ledger.replaceAll("household=\\w+|,[0-9a-f]{6}-[0-9a-f]{16}\n", "\n");
  }

  /** Some write other digits, and an i has another capital; neither may reach a sheet or a file. */
  @ParameterizedTest
  @ValueSource(strings = {"ar-EG", "ar-EG-u-nu-arab", "tr-TR"})
  void theLocaleChangesNothing(String locale) throws IOException {
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ROOT);
      String plain = year("plain");
      Locale.setDefault(Locale.forLanguageTag(locale));
      assertEquals(plain, year("there"));
    } finally {
      Locale.setDefault(usual);
    }
    Map<String, String> there = files("there");
    assertTrue(there.size() > 20, there.keySet()::toString);
    files("plain").forEach((name, text) -> assertEquals(text, there.get(name), name));
  }

  /** Nothing is lost by it: it is remarked, and the jars are as the order of the lines says. */
  @Test
  void aClockSetBackIsRemarkedAndLosesNothing() throws IOException {
    year("house");
    Household house = new Household(temp.resolve("house")).at("2025-01-01T12:00:00-06:00");
    assertEquals(0, house.run("kit", "plan.yaml"), house::told);
    assertEquals(1, house.run((seal("260824B-R", 1) + " --acid yes").split(" ")));
    assertTrue(house.told().contains("has not come yet"), house::told);
    assertEquals(0, house.run("move", "260824A-T/06", "--to", "attic"), house::told);
    assertEquals(0, house.run("toss", "260824A-T/06", "--why", "cracked"), house::told);
    assertEquals(1, house.run("take", "260824A-T/06"), house::told);
    house.at("2026-08-25T09:00:00-05:00");
    assertEquals(0, house.run("shelf"), house::told);
    assertEquals(1, house.told().split("lies before", -1).length - 1, house::told);
    assertFalse(house.said().contains("/06"), house::said);
    assertEquals(0, house.run("undo"), house::told);
    assertEquals(0, house.run("take", "260824A-T/06"), house::told);
  }
}
