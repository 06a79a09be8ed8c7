package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.pantry.Sign;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages as they are served, and what is recorded from them. */
class ServeTest {
  @TempDir Path folder;
  private ServedHome home;
  private Browser phone;

  @BeforeEach
  void serve() throws Exception {
    home = ServedHome.open(folder, false);
    phone = new Browser(home);
  }

  @AfterEach
  void close() {
    home.close();
    assertEquals(List.of(), home.log());
  }

  private void giveTheCode() throws Exception {
    phone.get(ServedHome.JAR);
    assertEquals(
        303,
        ServedHome.status(phone.post("/code", Map.of("code", "12345678", "to", ServedHome.JAR))));
    phone.get(ServedHome.JAR);
  }

  @Test
  void aJarsPageSaysAtOnceHowItStands() throws Exception {
    String sound = phone.get(ServedHome.JAR);
    assertTrue(sound.contains("OK to use by") && sound.contains("cellar B3"), sound);
    String unsealed = phone.get("/260824A-T/05");
    assertFalse(unsealed.contains("OK to use by"), unsealed);
    assertEquals(2, unsealed.split("The jar did not seal", -1).length, "said once: " + unsealed);
    assertTrue(phone.get("/260824A-T/03/USE-BY-2027-08-24").contains("OK to use by"), "as scanned");
    assertTrue(phone.get("/260824a-t/03").contains("OK to use by"), "in small letters");
  }

  @Test
  void withTheCodeAJarIsTakenAndTheShelfKnowsIt() throws Exception {
    giveTheCode();
    String answer = phone.post(ServedHome.JAR + "/take", Map.of("by", "Aino", "note", "pie"));
    assertEquals(303, ServedHome.status(answer), answer);
    assertTrue(home.ledger().contains("Aino"), home.ledger());
    assertFalse(phone.get(ServedHome.JAR).contains("OK to use by"));
  }

  @Test
  void movedAndThrownAwayAreRecordedWithWhereAndWhy() throws Exception {
    giveTheCode();
    assertEquals(
        303,
        ServedHome.status(phone.post("/260824A-T/02/move", Map.of("to", "pantry C1", "by", ""))));
    phone.get("/260824A-T/04");
    assertEquals(
        303,
        ServedHome.status(
            phone.post("/260824A-T/04/toss", Map.of("why", "glass chipped", "by", ""))));
    assertTrue(home.ledger().contains("pantry C1") && home.ledger().contains("glass chipped"));
    String without = phone.post("/260824A-T/06/toss", Map.of("why", "", "by", ""));
    assertEquals(400, ServedHome.status(without), without);
  }

  /** What its verdict keeps from being eaten cannot be taken from a phone either. */
  @Test
  void aJarThatIsNotFitIsNotTaken() throws Exception {
    giveTheCode();
    String before = home.ledger();
    phone.get("/260824A-T/05");
    String answer = phone.post("/260824A-T/05/take", Map.of("by", ""));
    assertEquals(409, ServedHome.status(answer), answer);
    assertEquals(before, home.ledger());
    phone.get("/260824B-R/01");
    assertEquals(409, ServedHome.status(phone.post("/260824B-R/01/take", Map.of("by", ""))));
    assertEquals(before, home.ledger());
  }

  /** A jar in doubt is looked over sign by sign, by the same rule as at the terminal. */
  @Test
  void aJarInDoubtIsLookedOverBeforeItIsTaken() throws Exception {
    home.run("trace", "260824A-T/03", "--spoiled", "spurts");
    giveTheCode();
    String page = phone.get("/260824A-T/04");
    assertTrue(page.contains("Do not eat yet") && page.contains("spurting"), page);
    assertTrue(page.contains("/260824A-T/04/check") && !page.contains("/260824A-T/04/take"), page);
    String before = home.ledger();
    assertEquals(409, ServedHome.status(phone.post("/260824A-T/04/take", Map.of("by", ""))));
    Map<String, String> look = new TreeMap<>();
    look.put("by", "");
    for (Sign sign : Sign.values()) {
      assertEquals(400, ServedHome.status(phone.post("/260824A-T/04/check", look)), "all asked");
      look.put(sign.word(), "no");
    }
    assertEquals(before, home.ledger());
    assertEquals(303, ServedHome.status(phone.post("/260824A-T/04/check", look)));
    assertTrue(phone.get("/260824A-T/04").contains("/260824A-T/04/take"));
    phone.get("/260824A-T/06");
    look.put("leaks", "yes");
    assertEquals(303, ServedHome.status(phone.post("/260824A-T/06/check", look)));
    String leaking = phone.get("/260824A-T/06");
    assertTrue(leaking.contains("Do not eat. Throw away.") && leaking.contains("leaks"), leaking);
    assertTrue(phone.get("/260824A-T/04").contains("Do not eat yet"), "in doubt again");
    String look06 = "06,checked,leaks=yes | bulges=no | spurts=no | smell=no | mold=no | color=no";
    assertTrue(home.ledger().contains(look06), home.ledger());
  }

  /** That a jar was spoiled concerns its lot, so it is not lost in a reason. */
  @Test
  void aSpoiledJarIsToldSignBySignFromAPhoneToo() throws Exception {
    giveTheCode();
    phone.get("/260824A-T/04");
    String before = home.ledger();
    Map<String, String> toss = new TreeMap<>(Map.of("why", "lid bulged", "by", ""));
    String refused = phone.post("/260824A-T/04/toss", toss);
    assertEquals(409, ServedHome.status(refused), refused);
    assertEquals(before, home.ledger());
    toss.put("bulges", "yes");
    assertEquals(303, ServedHome.status(phone.post("/260824A-T/04/toss", toss)));
    assertTrue(phone.get("/260824A-T/06").contains("Do not eat yet"));
    assertTrue(phone.get("/260824A-T/02").contains("Do not eat yet"), "taken before");
  }

  /** The address in each printed code is one that the server answers with that very jar. */
  @Test
  void thePrintedCodesLeadToTheirJars() throws Exception {
    home.close();
    home =
        ServedHome.open(
            Files.createDirectories(folder.resolve("linked")), false, ServedHome.linkedPlan());
    List<String> codes = home.codes();
    assertEquals(23, codes.size());
    for (String code : codes) {
      String base = "HTTP://" + ServedHome.NAME.toUpperCase(java.util.Locale.ROOT);
      assertTrue(code.startsWith(base + "/"), code);
      String path = code.substring(base.length());
      String page =
          home.raw("GET " + path + " HTTP/1.1", "Host: " + ServedHome.NAME, "Connection: close");
      assertEquals(200, ServedHome.status(page), code);
      String jar = path.substring(1, path.indexOf("/USE-BY-"));
      assertTrue(page.contains("<p class=\"code\">" + jar + "</p>"), page);
    }
  }

  @Test
  void withoutTheCodeNothingIsRecorded() throws Exception {
    String before = home.ledger();
    phone.get(ServedHome.JAR);
    String answer = phone.post(ServedHome.JAR + "/take", Map.of("by", "", "note", ""));
    assertEquals(403, ServedHome.status(answer), answer);
    assertEquals(before, home.ledger());
  }

  /** A form of somebody else's page: wrong origin, none, no token, another browser's token. */
  @Test
  void aFormFromElsewhereIsNotTaken() throws Exception {
    giveTheCode();
    String before = home.ledger();
    Map<String, String> fields = Map.of("by", "", "note", "");
    String take = ServedHome.JAR + "/take";
    Browser other = new Browser(home);
    other.get(ServedHome.JAR);
    for (String origin : List.of("http://evil.example", "null", "")) {
      assertEquals(403, ServedHome.status(phone.post(take, fields, phone.token(), origin)), origin);
    }
    assertEquals(403, ServedHome.status(phone.post(take, fields, "", home.address())));
    assertEquals(403, ServedHome.status(phone.post(take, fields, other.token(), home.address())));
    assertEquals(before, home.ledger());
  }

  /** Five wrong codes from one address, then not even the right one is looked at. */
  @Test
  void theCodeCannotBeGuessed() throws Exception {
    phone.get(ServedHome.JAR);
    for (int i = 0; i < 5; i++) {
      String wrong = phone.post("/code", Map.of("code", "0000000" + i, "to", "/"));
      assertEquals(403, ServedHome.status(wrong), wrong);
    }
    String right = phone.post("/code", Map.of("code", "12345678", "to", "/"));
    assertEquals(429, ServedHome.status(right), right);
    assertTrue(right.toLowerCase(java.util.Locale.ROOT).contains("retry-after: 600"), right);
  }

  @Test
  void afterTheCodeNobodyIsSentElsewhere() throws Exception {
    phone.get(ServedHome.JAR);
    String answer =
        phone.post("/code", Map.of("code", "12345678", "to", "//evil.example/260824A-T/03"));
    assertTrue(answer.contains("Location: /\r\n"), answer);
  }

  @Test
  void aJarOfAnotherHouseholdStillShowsWhatItsCodeHolds() throws Exception {
    String gift = phone.get("/250701A-C/07/USE-BY-2026-07-01");
    assertEquals(404, ServedHome.status(gift));
    assertTrue(gift.contains("July 1, 2025") && gift.contains("has passed: July 1, 2026"), gift);
    String mistyped = phone.get("/260824A-U/03");
    assertTrue(mistyped.contains("Mistyped code"), mistyped);
  }

  /** Markup in every field that a plan can hold comes out as text. */
  @Test
  void markupInAPlanIsOnlyText() throws Exception {
    home.close();
    String evil = "\"><script>alert(1)</script><img src=x onerror=alert(2)>'";
    String yaml = "'" + evil.replace("'", "''") + "'";
    String plan =
        """
        kitchen:
          household: EVIL
          altitude: 420 m
          canners:
            - name: EVIL
              method: boiling-water
        batches:
          - product: plums-halved-or-whole
            pack: raw
            jar: quart
            jars: 14
            date: 2026-08-24
            from: EVIL
            shelf: EVIL
            lids: EVIL
            note: EVIL
        """
            .replace("EVIL", yaml);
    home = ServedHome.open(Files.createDirectories(folder.resolve("evil")), false, plan);
    home.run("move", "260824A-T/03", "--to", evil, "--by", evil);
    home.run("toss", "260824A-T/04", "--why", evil);
    for (String path : List.of("/", "/260824A-T", "/260824A-T/03", "/260824A-T/04")) {
      String page = home.get(path);
      assertEquals(200, ServedHome.status(page), page);
      assertFalse(page.contains("<script>alert") || page.contains("<img"), path);
    }
    assertTrue(home.get("/260824A-T/03").contains("&lt;script&gt;alert(1)"), "shown as text");
    home.run("pages", "-o", "site");
    String file = Files.readString(folder.resolve("evil/site/index.html"));
    assertFalse(file.contains("<script>alert") || file.contains("<img"), file);
  }

  @Test
  void privateAsksForTheCodeToRead() throws Exception {
    home.close();
    home = ServedHome.open(Files.createDirectories(folder.resolve("own")), true);
    phone = new Browser(home);
    for (String path : List.of("/", "/260824A-T", ServedHome.JAR)) {
      String page = phone.get(path);
      assertEquals(403, ServedHome.status(page), page);
      assertFalse(page.contains("Plums"), page);
    }
    giveTheCode();
    assertTrue(phone.get(ServedHome.JAR).contains("OK to use by"));
  }

  /** Another program writes to the ledger: every answer is whole, and the last one knows it all. */
  @Test
  void servesWhileAnotherProgramWrites() throws Exception {
    Process other =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                MovingProgram.class.getName(),
                folder.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    int answers = 0;
    while (other.isAlive()) {
      assertEquals(200, ServedHome.status(home.get("/260824A-T/01")));
      answers++;
    }
    assertEquals(0, other.exitValue());
    assertTrue(answers > 0);
    assertTrue(home.get("/260824A-T/01").contains(MovingProgram.LAST), "the last shelf");
  }

  /** A program of its own that moves a jar to one shelf after the other. */
  static final class MovingProgram {
    static final String LAST = "shelf 20";

    private MovingProgram() {}

    public static void main(String[] args) {
      for (int i = 1; i <= 20; i++) {
        int status =
            new Program(
                    new Surroundings(
                        System.out, System.err, ServedHome.MORNING, Path.of(args[0]), Map.of()))
                .run("move", "260824A-T/01", "--to", "shelf " + i, "-q");
        if (status != 0) {
          System.exit(status);
        }
      }
    }
  }
}
