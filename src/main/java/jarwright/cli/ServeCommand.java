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
import java.util.regex.Pattern;
import org.apache.commons.cli.Options;

/** The pages live from the ledger, for a phone that scans a jar. */
final class ServeCommand implements Command {
  private static final String PORT = "port";
  private static final String LAN = "lan";
  private static final String PRIVATE = "private";
  private static final String TEMPLATES = "templates";
  private static final int USUAL_PORT = 8_080;
  private static final int LAST_PORT = 65_535;
  private static final Pattern WHOLE = Pattern.compile("[0-9]{1,5}");

  @Override
  public String name() {
    return "serve";
  }

  @Override
  public String arguments() {
    return "[--port N] [--lan] [--private]";
  }

  @Override
  public String summary() {
    return "the same pages live, for a phone that scans a jar";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(
            CommonOptions.withValue(
                null,
                PORT,
                "N",
                "else that of the kitchen's link, or " + USUAL_PORT + "; 0 for any free"))
        .addOption(CommonOptions.flag(LAN, "for the household's network, not this computer alone"))
        .addOption(CommonOptions.flag(PRIVATE, "reading takes the household code too"))
        .addOption(CommonOptions.withValue(null, TEMPLATES, "DIR", "your own templates"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    if (!call.arguments().isEmpty()) {
      throw new Usage("serve takes no arguments; try jarwright serve --help");
    }
    Optional<Integer> asked = port(call);
    Books books = Books.open(call);
    Optional<URI> link = books.kitchen().flatMap(Kitchen::link).map(URI::create);
    int port = asked.or(() -> link.map(URI::getPort).filter(p -> p > 0)).orElse(USUAL_PORT);
    boolean lan = call.has(LAN);
    Optional<HouseholdCode> code =
        lan || call.has(PRIVATE)
            ? Optional.of(HouseholdCode.draw(new SecureRandom()))
            : Optional.empty();
    LocalServer.Access access =
        new LocalServer.Access(port, lan, code, call.has(PRIVATE), names(link));
    LocalServer.Making making =
        new LocalServer.Making(
            WordBundle.load(PageManner.language(books.kitchen())),
            PageManner.of(books.kitchen()),
            new Printer(call.path(TEMPLATES)),
            call.surroundings().clock().withZone(books.zone()),
            line -> call.surroundings().err().println(line));
    try (LocalServer server = start(new FiledHousehold(call.pantry()), access, making)) {
      Runtime.getRuntime().addShutdownHook(new Thread(server::close, "close"));
      List<InetAddress> own = lan ? Neighbourhood.ownAddresses() : List.of();
      boolean pictured =
          call.surroundings().keyboard().isPresent()
              && SpelledStream.shows(call.out(), QrBlocks.SIGNS);
      new ServeWelcome(own, server.port(), access, link)
          .lines(pictured)
          .forEach(call.out()::println);
      call.out().flush();
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
          "port "
              + access.port()
              + " cannot be had ("
              + e.getMessage()
              + "); another program may have it: give another with --port",
          e);
    }
  }

  private static Optional<Integer> port(Call call) throws Usage {
    Optional<String> given = call.value(PORT);
    if (given.isEmpty()) {
      return Optional.empty();
    }
    if (WHOLE.matcher(given.get()).matches() && Integer.parseInt(given.get()) <= LAST_PORT) {
      return given.map(Integer::parseInt);
    }
    throw new Usage("--port " + given.get() + ": takes a whole number from 0 to " + LAST_PORT);
  }

  /** The name that the labels' codes call this computer by. */
  private static Set<String> names(Optional<URI> link) {
    return link.map(URI::getAuthority).map(Set::of).orElse(Set.of());
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
