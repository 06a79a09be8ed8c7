package jarwright.web;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import jarwright.problem.Refused;
import jarwright.web.Request.Bad;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Every request comes through here: what no browser of the household would send is turned away with
 * a bare status before anything else looks at it.
 */
final class Door implements HttpHandler {
  private static final Set<String> METHODS = Set.of("GET", "HEAD", "POST");

  private final Hosts hosts;
  private final Visitors visitors;
  private final Reception reception;
  private final LivePages pages;
  private final Supplier<OffsetDateTime> clock;
  private final Consumer<String> log;
  private final String policy;

  Door(
      Hosts hosts,
      Visitors visitors,
      Reception reception,
      LivePages pages,
      Supplier<OffsetDateTime> clock,
      Consumer<String> log) {
    this.hosts = hosts;
    this.visitors = visitors;
    this.reception = reception;
    this.pages = pages;
    this.clock = clock;
    this.log = log;
    this.policy = pages.policy(clock.get());
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      answer(exchange).send(exchange, policy);
    }
  }

  private Answer answer(HttpExchange exchange) throws IOException {
    try {
      if (!Neighbourhood.holds(exchange.getRemoteAddress().getAddress())) {
        throw new Bad(403);
      }
      if (!METHODS.contains(exchange.getRequestMethod())) {
        return Answer.bare(405).with("Allow", "GET, HEAD, POST");
      }
      Request request = Request.of(exchange);
      check(request);
      return reception.answer(request, clock.get());
    } catch (Bad e) {
      return Answer.bare(e.status());
    } catch (Refused e) {
      List<String> problems = e.problems().stream().map(p -> p.text()).toList();
      return told(500, "web.refused", String.join(" ", problems));
    } catch (IOException e) {
      return told(500, "web.unreadable", String.valueOf(e.getMessage()));
    } catch (RuntimeException e) {
      // A fault of the program: one line for whoever started it, no inside for the caller.
      log.accept("a page could not be made: " + e);
      return Answer.bare(500);
    }
  }

  private Answer told(int status, String key, String what) {
    log.accept(what);
    return Answer.page(status, pages.message(key, what, "/", clock.get()));
  }

  private void check(Request request) throws Bad {
    if (request.host().filter(h -> hosts.isOurs(h, request.called())).isEmpty()) {
      throw new Bad(421);
    }
    if (request.isPost()) {
      // All browsers say where a form comes from, and pages of other sites cannot say otherwise.
      boolean ownPage =
          request
              .origin()
              .filter(o -> o.equalsIgnoreCase("http://" + request.host().get()))
              .isPresent();
      boolean sameSite = request.site().map(s -> s.equals("same-origin")).orElse(true);
      if (!ownPage || !sameSite || !visitors.isToken(request.mark(), request.field("token"))) {
        throw new Bad(403);
      }
    }
  }
}
