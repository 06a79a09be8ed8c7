package jarwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import jarwright.files.PlanReader;
import jarwright.render.Printer;
import jarwright.render.WordBundle;
import jarwright.web.HouseholdCode;
import jarwright.web.LocalServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** An invented household with sealed jars, served on a free port of this computer. */
final class ServedHome implements AutoCloseable {
  static final Clock MORNING = Clock.fixed(Instant.parse("2026-08-26T08:00:00Z"), ZoneOffset.UTC);
  static final String LOT = "260824A-T";
  static final String JAR = "/260824A-T/03";
  static final HouseholdCode CODE = HouseholdCode.parse("1234 5678");

  private final Path folder;
  private final List<String> log = Collections.synchronizedList(new ArrayList<>());
  private LocalServer server;

  private ServedHome(Path folder) {
    this.folder = folder;
  }

  /** Fourteen plums in quarts at B3, all sealed but jar 5. */
  static ServedHome open(Path folder, boolean isPrivate) throws Exception {
    return open(folder, isPrivate, Files.readString(Path.of("samples/plum-day.yaml")));
  }

  static ServedHome open(Path folder, boolean isPrivate, String plan) throws Exception {
    ServedHome home = new ServedHome(folder);
    Path file = Files.writeString(folder.resolve("plan.yaml"), plan);
    home.run("kit", file.toString(), "-q");
    for (String load : List.of("1", "2")) {
      home.run(
          "seal",
          LOT,
          "--load",
          load,
          "--start",
          "10:0" + load,
          "--end",
          "10:5" + load,
          "--kept",
          "yes",
          "--restarts",
          "0",
          "--cloudy",
          "no",
          "--sealed",
          "all",
          "--unsealed",
          load.equals("1") ? "5" : "none");
    }
    home.server =
        LocalServer.start(
            new FiledHousehold(home.pantry()),
            new LocalServer.Access(0, false, Optional.of(CODE), isPrivate, Set.of()),
            new LocalServer.Making(
                WordBundle.load("en"),
                PageManner.of(Optional.of(PlanReader.readKitchen(Path.of("samples/kitchen.yaml")))),
                new Printer(Optional.empty()),
                MORNING,
                home.log::add));
    return home;
  }

  Path pantry() {
    return folder.resolve("pantry");
  }

  /** Runs a command in the household; what it printed. */
  String run(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        new Program(
                new Surroundings(
                    new PrintStream(out, true, UTF_8),
                    new PrintStream(err, true, UTF_8),
                    MORNING,
                    folder,
                    Map.of()))
            .run(args);
    if (status != 0) {
      throw new AssertionError(String.join(" ", args) + ": " + err.toString(UTF_8));
    }
    return out.toString(UTF_8);
  }

  String ledger() throws IOException {
    return Files.readString(pantry().resolve("ledger.csv"));
  }

  int port() {
    return server.port();
  }

  String address() {
    return "http://localhost:" + port();
  }

  /** Faults that the server told of. */
  List<String> log() {
    return log;
  }

  Socket connect() throws IOException {
    Socket socket = new Socket(InetAddress.getLoopbackAddress(), port());
    socket.setSoTimeout(20_000);
    return socket;
  }

  /** Sends lines as they are, an empty one after them, and reads until the server closes. */
  String raw(String... lines) throws IOException {
    try (Socket socket = connect()) {
      socket.getOutputStream().write((String.join("\r\n", lines) + "\r\n\r\n").getBytes(UTF_8));
      socket.getOutputStream().flush();
      return read(socket.getInputStream());
    } catch (java.net.SocketException e) {
      return "";
    }
  }

  private static String read(InputStream in) throws IOException {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    byte[] some = new byte[8_192];
    try {
      for (int n = in.read(some); n > 0; n = in.read(some)) {
        all.write(some, 0, n);
      }
    } catch (java.net.SocketException e) {
      // The server broke off: what came before is the answer.
      return all.toString(UTF_8);
    }
    return all.toString(UTF_8);
  }

  /** A plain page request, the connection closed after it. */
  String get(String path) throws IOException {
    return raw("GET " + path + " HTTP/1.1", "Host: localhost:" + port(), "Connection: close");
  }

  static int status(String answer) {
    return answer.startsWith("HTTP/1.1 ") ? Integer.parseInt(answer.substring(9, 12)) : 0;
  }

  @Override
  public void close() {
    server.close();
  }
}
