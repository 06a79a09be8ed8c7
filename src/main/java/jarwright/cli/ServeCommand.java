package jarwright.cli;

import jarwright.plan.Kitchen;
import jarwright.problem.Refused;
import jarwright.render.Printer;
import jarwright.render.QrBlocks;
import jarwright.render.WordBundle;
import jarwright.web.HouseholdCode;
import jarwright.web.LocalServer;
import jarwright.web.Neighbourhood;
import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.URI;
import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.cli.Options;

/** The pages live from the ledger, for a phone that scans a jar. */
final class ServeCommand implements Command {
  private static final String PORT = "port";
  private static final String LAN = "lan";
  private static final String PRIVATE = "private";
  private static final String TEMPLATES = "templates";
  private static final int USUAL_PORT = 8_080;
  private static final int LAST_PORT = 65_535;

  @Override
  public String name() {
    return "serve";
  }

  @Override
  public String arguments() {
    return "[--port N] [--lan]";
  }

  @Override
  public String summary() {
    return "the same pages live, for a phone that scans a jar";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(
            CommonOptions.withValue(null, PORT, "N", "else " + USUAL_PORT + "; 0 for any free one"))
        .addOption(CommonOptions.flag(LAN, "for the household's network, not this computer alone"))
        .addOption(CommonOptions.flag(PRIVATE, "reading takes the household code too"))
        .addOption(CommonOptions.withValue(null, TEMPLATES, "DIR", "your own templates"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    if (!call.arguments().isEmpty()) {
      throw new Usage("serve takes no arguments; try jarwright serve --help");
    }
    int port = port(call);
    Books books = Books.open(call);
    boolean lan = call.has(LAN);
    Optional<HouseholdCode> code =
        lan || call.has(PRIVATE)
            ? Optional.of(HouseholdCode.draw(new SecureRandom()))
            : Optional.empty();
    LocalServer.Access access =
        new LocalServer.Access(port, lan, code, call.has(PRIVATE), names(books.kitchen()));
    LocalServer.Making making =
        new LocalServer.Making(
            WordBundle.load(PageManner.language(books.kitchen())),
            PageManner.of(books.kitchen()),
            new Printer(call.path(TEMPLATES)),
            call.surroundings().clock().withZone(books.zone()),
            line -> call.surroundings().err().println(line));
    try (LocalServer server = start(new FiledHousehold(call.pantry()), access, making)) {
      Runtime.getRuntime().addShutdownHook(new Thread(server::close, "close"));
      welcome(call, server.port(), lan, code);
      waitForTheEnd();
    }
  }

  private static LocalServer start(
      FiledHousehold household, LocalServer.Access access, LocalServer.Making making)
      throws IOException {
    try {
      return LocalServer.start(household, access, making);
    } catch (BindException e) {
      throw new IOException(
          "port " + access.port() + " is taken by another program; give another with --port", e);
    }
  }

  private static int port(Call call) throws Usage {
    String given = call.value(PORT).orElse(String.valueOf(USUAL_PORT));
    try {
      int port = Integer.parseInt(given);
      if (port >= 0 && port <= LAST_PORT) {
        return port;
      }
    } catch (NumberFormatException e) {
      throw new Usage("--port " + given + ": takes a whole number from 0 to " + LAST_PORT);
    }
    throw new Usage("--port " + given + ": takes a whole number from 0 to " + LAST_PORT);
  }

  private static void welcome(Call call, int port, boolean lan, Optional<HouseholdCode> code) {
    List<InetAddress> own = lan ? Neighbourhood.ownAddresses() : List.of();
    String host = own.isEmpty() ? "localhost" : own.get(0).getHostAddress();
    String address = "http://" + host + ":" + port + "/";
    call.out().println("The pages are at " + address);
    if (lan && own.isEmpty()) {
      call.out().println("No network was found: phones cannot reach this computer now.");
    } else if (lan) {
      own.stream()
          .skip(1)
          .forEach(
              o -> call.out().println("  or at http://" + o.getHostAddress() + ":" + port + "/"));
      picture(call, address);
      call.out().println("Anybody in this network can read them over a plain connection.");
    }
    code.ifPresent(
        c ->
            call.out()
                .println("Household code, asked for before anything is changed: " + c.shown()));
    call.out().println("Ctrl-C ends it.");
    call.out().flush();
  }

  /** The address as a QR code, where a terminal shows it. */
  private static void picture(Call call, String address) {
    if (call.surroundings().keyboard().isPresent()) {
      QrBlocks.of(address).forEach(call.out()::println);
    }
  }

  /** The name that the labels' codes call this computer by. */
  private static Set<String> names(Optional<Kitchen> kitchen) {
    return kitchen
        .flatMap(Kitchen::link)
        .map(link -> URI.create(link).getAuthority())
        .map(Set::of)
        .orElse(Set.of());
  }

  /** Until the program is ended from outside. */
  private static void waitForTheEnd() {
    try {
      Thread.currentThread().join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
