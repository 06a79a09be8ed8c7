package jarwright.web;

import com.sun.net.httpserver.HttpServer;
import jarwright.page.Wording;
import jarwright.record.RecordPages;
import jarwright.render.Printer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The pages on the JDK's own HTTP server, until it is closed. */
public final class LocalServer implements AutoCloseable {
  private static final int WAITING = 64;
  private static final int SECONDS_TO_FINISH = 3;

  private final HttpServer server;
  private final ThreadPoolExecutor threads;

  /**
   * Who is served, and at what price.
   *
   * @param port 0 for any free one
   * @param lan whether callers from the household's network are, not from this computer alone
   * @param code what changes over it take; empty where nothing does
   * @param isPrivate whether reading takes the code as well
   * @param names by which the server may be called besides its addresses, as {@code
   *     pantry.lan:8080}
   */
  public record Access(
      int port, boolean lan, Optional<HouseholdCode> code, boolean isPrivate, Set<String> names) {
    public Access {
      names = Set.copyOf(names);
      if (code.isEmpty() && (lan || isPrivate)) {
        throw new IllegalArgumentException("to be open to the network takes a household code");
      }
    }
  }

  /**
   * How pages are made.
   *
   * @param log takes one line for each fault
   */
  public record Making(
      Wording words,
      RecordPages.Manner manner,
      Printer printer,
      Clock clock,
      Consumer<String> log) {}

  private LocalServer(HttpServer server, ThreadPoolExecutor threads) {
    this.server = server;
    this.threads = threads;
  }

  /**
   * Starts serving.
   *
   * @throws IOException where the port is taken or not allowed
   */
  public static LocalServer start(Household household, Access access, Making making)
      throws IOException {
    ServerLimits.set();
    InetSocketAddress address =
        access.lan()
            ? new InetSocketAddress(access.port())
            : new InetSocketAddress(InetAddress.getLoopbackAddress(), access.port());
    HttpServer server = HttpServer.create(address, WAITING);
    ThreadPoolExecutor threads =
        new ThreadPoolExecutor(
            0,
            ServerLimits.CONNECTIONS,
            SECONDS_TO_FINISH,
            TimeUnit.SECONDS,
            new SynchronousQueue<>(),
            LocalServer::thread,
            new ThreadPoolExecutor.DiscardPolicy());
    server.setExecutor(threads);
    server.createContext("/", door(household, access, making, server.getAddress().getPort()));
    server.start();
    return new LocalServer(server, threads);
  }

  private static Door door(Household household, Access access, Making making, int port) {
    Visitors visitors = new Visitors(new SecureRandom());
    LivePages pages = new LivePages(making.words(), making.manner(), making.printer());
    Reception.Rights rights =
        new Reception.Rights(access.code().map(Guesses::new), access.isPrivate());
    Reception reception = new Reception(household, pages, visitors, rights);
    Clock clock = making.clock();
    Supplier<OffsetDateTime> now = () -> clock.instant().atZone(clock.getZone()).toOffsetDateTime();
    return new Door(new Hosts(port, access.names()), visitors, reception, pages, now, making.log());
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "page");
    thread.setDaemon(true);
    return thread;
  }

  public int port() {
    return server.getAddress().getPort();
  }

  /** Lets running answers end, for some seconds at most, then frees the port. */
  @Override
  public void close() {
    threads.shutdown();
    try {
      if (!threads.awaitTermination(SECONDS_TO_FINISH, TimeUnit.SECONDS)) {
        threads.shutdownNow();
      }
    } catch (InterruptedException e) {
      threads.shutdownNow();
      Thread.currentThread().interrupt();
    }
    server.stop(0);
  }
}
