package jarwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.decoder.Decoder;
import jarwright.render.QrBlocks;
import jarwright.web.LocalServer;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.ConnectException;
import java.net.HttpURLConnection;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How the server is started, what whoever starts it is told, and how it ends. */
class ServeCommandTest {
  @TempDir Path folder;

  private static List<String> told(boolean lan, boolean isPrivate, boolean pictured, String link)
      throws IOException {
    List<InetAddress> own =
        lan
            ? List.of(InetAddress.getByName("192.168.1.5"), InetAddress.getByName("10.0.0.7"))
            : List.of();
    LocalServer.Access access =
        new LocalServer.Access(
            0,
            lan,
            lan || isPrivate ? Optional.of(ServedHome.CODE) : Optional.empty(),
            isPrivate,
            Set.of());
    return new ServeWelcome(own, 8080, access, Optional.of(link).map(URI::create)).lines(pictured);
  }

  @Test
  void onThisComputerAloneItTellsTheAddressAndHowToEndIt() throws Exception {
    assertEquals(
        List.of("The pages are at http://localhost:8080/", "Ctrl-C ends it."),
        told(false, false, true, "http://pantry.lan:8080"));
  }

  @Test
  void inTheNetworkItTellsWhoCanReachItAndTheCode() throws Exception {
    assertEquals(
        List.of(
            "The pages are at http://192.168.1.5:8080/",
            "  or at http://10.0.0.7:8080/",
            "Anybody in this network can read them, over a plain connection.",
            "Household code, asked for before anything is changed: 1234 5678",
            "The labels' codes lead to http://pantry.lan:9000, not here: --port 9000",
            "Ctrl-C ends it."),
        told(true, false, false, "http://pantry.lan:9000"));
    String own = String.join("\n", told(true, true, false, "http://pantry.lan:8080"));
    assertTrue(own.contains("before anything is shown or changed: 1234 5678"), own);
    assertFalse(own.contains("Anybody in this network") || own.contains("labels"), own);
  }

  @Test
  void theCodeOnTheTerminalIsThePagesAddress() throws Exception {
    List<String> lines = told(true, false, true, "http://pantry.lan:8080");
    List<String> blocks =
        lines.stream().filter(l -> l.matches("[ \u2580\u2584\u2588]{20,}")).toList();
    assertEquals(QrBlocks.of("http://192.168.1.5:8080/"), blocks);
    assertEquals("http://192.168.1.5:8080/", read(blocks));
  }

  /** Reads half blocks back: light where there is ink, four light modules around. */
  private static String read(List<String> blocks) throws Exception {
    int size = blocks.get(0).length() - 8;
    BitMatrix dark = new BitMatrix(size);
    for (int y = 0; y < size; y++) {
      for (int x = 0; x < size; x++) {
        char block = blocks.get((y + 4) / 2).charAt(x + 4);
        boolean upper = (y + 4) % 2 == 0;
        boolean light = block == '\u2588' || block == (upper ? '\u2580' : '\u2584');
        if (!light) {
          dark.set(x, y);
        }
      }
    }
    return new Decoder().decode(dark).getText();
  }

  @Test
  void whatIsNoPortIsRefusedAsUsage() throws Exception {
    Household house = Household.withKit(folder);
    for (String port : List.of("80x", "65536", "-1", "", "99999999999")) {
      assertEquals(2, house.run("serve", "--port=" + port), port);
      assertTrue(house.told().contains("takes a whole number from 0 to 65535"), house.told());
    }
    assertEquals(2, house.run("serve", "pantry"));
  }

  @Test
  void withoutALedgerThereIsNothingToServe() throws Exception {
    Household house = new Household(folder);
    assertEquals(1, house.run("serve", "--port", "0"), house.told());
    assertTrue(house.told().contains("make a kit first"), house.told());
  }

  /**
   * The labels' port is the usual one; where another program has it, that is told by its number.
   */
  @Test
  void aPortThatIsTakenIsToldByItsNumber() throws Exception {
    Household house = Household.withKit(folder);
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      String port = String.valueOf(taken.getLocalPort());
      assertEquals(3, house.run("serve", "--port", port), house.told());
      assertTrue(house.told().contains("port " + port + " cannot be had"), house.told());
      Path kitchen = house.file("pantry/kitchen.yaml");
      String link = "link: http://pantry.lan:" + port + "\n";
      Files.writeString(kitchen, link + Files.readString(kitchen));
      assertEquals(3, house.run("serve"), house.told());
      assertTrue(house.told().contains("port " + port + " cannot be had"), house.told());
    }
  }

  /**
   * A program of its own, ended as Ctrl-C or a shutdown ends it: it answers, stops, frees the port.
   */
  @Test
  void itEndsWhenItIsToldTo() throws Exception {
    Household house = Household.withKit(folder);
    byte[] before = Files.readAllBytes(house.file("pantry/ledger.csv"));
    Process server =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "serve",
                "--port",
                "0",
                "--pantry",
                house.file("pantry").toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try (BufferedReader out =
        new BufferedReader(new InputStreamReader(server.getInputStream(), UTF_8))) {
      String address = out.readLine().replace("The pages are at ", "");
      assertEquals("Ctrl-C ends it.", out.readLine());
      URI index = URI.create(address);
      HttpURLConnection page = (HttpURLConnection) index.toURL().openConnection();
      assertEquals(200, page.getResponseCode());
      page.disconnect();
      // Not the process itself: that would close what is read from here.
      server.toHandle().destroy();
      assertTrue(server.waitFor(30, TimeUnit.SECONDS), "still there");
      assertNull(out.readLine(), "nothing more to say");
      assertThrows(
          ConnectException.class,
          () -> new Socket(InetAddress.getLoopbackAddress(), index.getPort()).close());
    } finally {
      server.destroyForcibly();
    }
    assertArrayEquals(before, Files.readAllBytes(house.file("pantry/ledger.csv")));
  }
}
