package jarwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What somebody in the house's network could send to the running server to do harm. */
class ServeAbuseTest {
  @TempDir static Path folder;
  private static ServedHome home;

  @BeforeAll
  static void serve() throws Exception {
    Files.writeString(folder.resolve("secret.txt"), "not for anybody");
    home = ServedHome.open(folder, false);
  }

  @AfterAll
  static void close() {
    home.close();
  }

  /** Whatever was sent, the next visitor is served, and the server has told of no own fault. */
  @AfterEach
  void stillServes() throws Exception {
    assertEquals(200, ServedHome.status(home.get("/")));
    assertEquals(List.of(), home.log());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/../secret.txt",
        "/..%2fsecret.txt",
        "/%2e%2e/secret.txt",
        "/..\\secret.txt",
        "/....//secret.txt",
        "//etc/passwd",
        "/260824A-T/../../secret.txt",
        "/260824A-T/03/../../../secret.txt",
        "/ledger.csv",
        "/pantry/ledger.csv",
        "/batches/260824A-T.yaml",
        "/batches/",
        "/kitchen.yaml",
        "/260824A-T.yaml",
        "/%00",
        "/260824A-T%00.yaml",
        "/secret.txt"
      })
  void nothingButPagesIsServed(String path) throws Exception {
    String answer = home.get(path);
    assertTrue(List.of(400, 404).contains(ServedHome.status(answer)), answer);
    assertFalse(answer.contains("not for anybody") || answer.contains("root:"), answer);
    assertFalse(answer.contains("event,detail"), answer);
  }

  @Test
  void noFolderIsListed() throws Exception {
    for (String path : List.of("/", "/260824A-T/", "/260824A-T/03/")) {
      assertFalse(home.get(path).toLowerCase(Locale.ROOT).contains("index of"), path);
    }
  }

  @Test
  void everyAnswerCarriesTheHeadersThatKeepBrowsersSafe() throws Exception {
    for (String path : List.of("/", ServedHome.JAR, "/nowhere", "/260824A-X", "/code")) {
      String head = home.get(path).split("\r\n\r\n", 2)[0].toLowerCase(Locale.ROOT);
      assertTrue(head.contains("content-security-policy: default-src 'none'"), head);
      assertTrue(head.contains("frame-ancestors 'none'"), head);
      assertTrue(head.contains("x-content-type-options: nosniff"), head);
      assertTrue(head.contains("x-frame-options: deny"), head);
      assertTrue(head.contains("referrer-policy: same-origin"), head);
      assertTrue(head.contains("cache-control: no-store"), head);
      assertFalse(head.contains("unsafe-inline") || head.contains("server:"), head);
    }
  }

  /** A page elsewhere whose name is made to lead here is turned away by its name: status 421. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "evil.example",
        "evil.example:80",
        "localhost",
        "localhost:1",
        "127.0.0.1.evil.example",
        "192.0.2.7",
        "[::1]:1",
        "localhost@evil.example",
        ""
      })
  void anotherHostsNameIsTurnedAway(String host) throws Exception {
    String answer = home.raw("GET / HTTP/1.1", "Host: " + host, "Connection: close");
    assertTrue(List.of(400, 421).contains(ServedHome.status(answer)), answer);
  }

  @Test
  void twoHostsOrNoneAreTurnedAway() throws Exception {
    String own = "Host: localhost:" + home.port();
    assertEquals(
        421,
        ServedHome.status(
            home.raw("GET / HTTP/1.1", own, "Host: evil.example", "Connection: close")));
    assertTrue(
        List.of(400, 421)
            .contains(ServedHome.status(home.raw("GET / HTTP/1.1", "Connection: close"))));
  }

  @Test
  void otherMethodsAndAbsoluteAddressesAreRefused() throws Exception {
    String own = "Host: localhost:" + home.port();
    for (String method : List.of("PUT", "DELETE", "OPTIONS", "TRACE", "PATCH", "CONNECT")) {
      int status = ServedHome.status(home.raw(method + " / HTTP/1.1", own, "Connection: close"));
      assertTrue(status == 405 || status == 400, method + " " + status);
    }
    assertEquals(
        400,
        ServedHome.status(home.raw("GET http://evil.example/ HTTP/1.1", own, "Connection: close")));
  }

  @Test
  void aQueryChangesNothing() throws Exception {
    String plain = home.get(ServedHome.JAR).split("\r\n\r\n", 2)[1];
    String asked = home.get(ServedHome.JAR + "?x=%3Cscript%3E&../=1").split("\r\n\r\n", 2)[1];
    String token = "name=\"token\" value=\"[0-9a-f]+\"";
    assertEquals(plain.replaceAll(token, ""), asked.replaceAll(token, ""));
  }

  @Test
  void anAddressOfAMegabyteIsRefusedAndCostsNobodyElseAnything() throws Exception {
    int status = ServedHome.status(home.get("/" + "a".repeat(1_000_000)));
    assertTrue(List.of(0, 400, 414, 431).contains(status), "" + status);
    assertEquals(414, ServedHome.status(home.get("/" + "a".repeat(1_000))));
  }

  @Test
  void headersWithoutEndAreRefused() throws Exception {
    List<String> lines =
        new ArrayList<>(List.of("GET / HTTP/1.1", "Host: localhost:" + home.port()));
    for (int i = 0; i < 500; i++) {
      lines.add("X-" + i + ": " + "y".repeat(100));
    }
    int status = ServedHome.status(home.raw(lines.toArray(String[]::new)));
    assertTrue(List.of(0, 400, 431).contains(status), "" + status);
  }

  @Test
  void aFormThatIsTooLongOrNoFormIsRefused() throws Exception {
    String own = "Host: localhost:" + home.port();
    String origin = "Origin: " + home.address();
    String long1 = "why=" + "x".repeat(20_000);
    assertEquals(
        413,
        ServedHome.status(
            home.raw(
                "POST " + ServedHome.JAR + "/toss HTTP/1.1",
                own,
                origin,
                "Content-Type: application/x-www-form-urlencoded",
                "Content-Length: " + long1.length(),
                "Connection: close",
                "",
                long1)));
    assertEquals(
        415,
        ServedHome.status(
            home.raw(
                "POST " + ServedHome.JAR + "/toss HTTP/1.1",
                own,
                origin,
                "Content-Type: text/plain",
                "Content-Length: 7",
                "Connection: close",
                "",
                "why=x&a")));
  }

  /** Two hundred callers that never finish asking hold nobody else up. */
  @Test
  void slowCallersHoldNobodyUp() throws Exception {
    List<Socket> slow = new ArrayList<>();
    try {
      for (int i = 0; i < 200; i++) {
        Socket socket = home.connect();
        OutputStream out = socket.getOutputStream();
        out.write("GET / HTTP/1.1\r\nHost: local".getBytes(UTF_8));
        out.flush();
        slow.add(socket);
      }
      assertEquals(200, ServedHome.status(home.get(ServedHome.JAR)));
    } finally {
      for (Socket socket : slow) {
        socket.close();
      }
    }
  }

  @Test
  void twoHundredAtOnceAreAllAnswered() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(200);
    try {
      List<Callable<Integer>> asks = new ArrayList<>();
      for (int i = 0; i < 200; i++) {
        asks.add(() -> ServedHome.status(home.get(ServedHome.JAR)));
      }
      for (Future<Integer> answer : threads.invokeAll(asks)) {
        assertEquals(200, answer.get());
      }
    } finally {
      threads.shutdownNow();
    }
  }
}
