package jarwright.web;

import jarwright.pantry.Jar;
import jarwright.pantry.JarReport;
import jarwright.pantry.Lot;
import jarwright.pantry.ToldProcess;
import jarwright.pantry.Vouched;
import jarwright.problem.Refused;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.Optional;

/** Answers what a browser of the household asks: pages, the household code, and what happened. */
final class Reception {
  private static final int LONGEST_NAME = 40;
  private static final int LONGEST_SOURCE = 200;

  private final Household household;
  private final LivePages pages;
  private final Visitors visitors;
  private final Rights rights;

  /**
   * What is free and what takes the household code.
   *
   * @param guesses empty where nothing takes the code
   * @param isPrivate whether reading takes it too
   */
  record Rights(Optional<Guesses> guesses, boolean isPrivate) {}

  Reception(Household household, LivePages pages, Visitors visitors, Rights rights) {
    this.household = household;
    this.pages = pages;
    this.visitors = visitors;
    this.rights = rights;
  }

  Answer answer(Request request, OffsetDateTime now) throws IOException, Refused {
    Route route = Route.of(request.path());
    if (route instanceof Route.Code) {
      return code(request, now);
    }
    if (rights.isPrivate() && !isKnown(request)) {
      return askForCode(request, request.isPost() ? "/" : request.path(), now);
    }
    if (request.isPost() != route instanceof Route.Act) {
      return Answer.bare(405).with("Allow", route instanceof Route.Act ? "POST" : "GET, HEAD");
    }
    if (route instanceof Route.Act act) {
      return act(request, act, now);
    }
    if (route instanceof Route.Mistyped mistyped) {
      return Answer.page(404, pages.message("web.mistyped", mistyped.message(), "/", now));
    }
    if (route instanceof Route.Nowhere) {
      return nowhere(now);
    }
    return page(request, route, household.stock(), now);
  }

  private Answer page(Request request, Route route, Stock stock, OffsetDateTime now)
      throws IOException, Refused {
    if (route instanceof Route.OfLot lot) {
      Optional<Lot> found = stock.lot(lot.lot());
      return found.isPresent()
          ? Answer.page(200, pages.lot(stock, found.get(), now))
          : Answer.page(404, pages.message("web.no-lot", lot.lot().toString(), "/", now));
    }
    if (route instanceof Route.OfJar jar) {
      Optional<Jar> found = stock.jar(jar.jar());
      return found.isPresent()
          ? jar(request, stock, found.get(), now)
          : Answer.page(404, pages.stranger(jar.jar(), jar.useBy(), now));
    }
    return Answer.page(200, pages.index(stock, now));
  }

  private Answer jar(Request request, Stock stock, Jar jar, OffsetDateTime now)
      throws IOException, Refused {
    Marked marked = marked(request);
    return marked.onto(Answer.page(200, pages.jar(stock, jar, marked.forms(), now)));
  }

  private Answer act(Request request, Route.Act act, OffsetDateTime now)
      throws IOException, Refused {
    String page = "/" + act.jar();
    if (!isKnown(request)) {
      return askForCode(request, page, now);
    }
    String by = request.field("by");
    if (by.length() > LONGEST_NAME) {
      return Answer.page(400, pages.message("web.incomplete", "", page, now));
    }
    if (act.action() == Action.VOUCH) {
      Optional<Vouched> vouched = vouched(request);
      return vouched.isEmpty()
          ? Answer.page(400, pages.message("web.incomplete", "", page, now))
          : recorded(() -> household.record(act.jar(), vouched.get(), now, by), page, now);
    }
    Optional<JarReport> report = act.action().report(request);
    return report.isEmpty()
        ? Answer.page(400, pages.message("web.incomplete", "", page, now))
        : recorded(() -> household.record(act.jar(), report.get(), now, by), page, now);
  }

  /** A name and the tested process; empty where one is missing or too long. */
  private static Optional<Vouched> vouched(Request request) {
    String source = request.field("source");
    Optional<String> who = Action.VOUCH.said(request);
    if (who.isEmpty() || source.isEmpty() || source.length() > LONGEST_SOURCE) {
      return Optional.empty();
    }
    return Optional.of(new Vouched(who.get(), source, ToldProcess.NOTHING));
  }

  private interface Recording {
    void run() throws IOException, Refused;
  }

  private Answer recorded(Recording recording, String page, OffsetDateTime now) throws IOException {
    try {
      recording.run();
      return Answer.seeOther(page);
    } catch (Refused e) {
      String why = e.problems().get(0).what();
      return Answer.page(409, pages.message("web.not-recorded", why, page, now));
    }
  }

  private Answer code(Request request, OffsetDateTime now) {
    if (rights.guesses().isEmpty()) {
      return nowhere(now);
    }
    if (!request.isPost()) {
      return askForCode(request, "/", now);
    }
    String to = ownPath(request.field("to"));
    return switch (rights
        .guesses()
        .get()
        .look(request.field("code"), request.caller(), now.toInstant())) {
      case RIGHT -> Answer.seeOther(to).with("Set-Cookie", cookie(visitors.welcome()));
      case WRONG -> codePage(request, 403, to, "web.code-wrong", now);
      case LATER ->
          codePage(request, 429, to, "web.code-later", now)
              .with("Retry-After", String.valueOf(Guesses.WHILE.toSeconds()));
    };
  }

  private Answer askForCode(Request request, String to, OffsetDateTime now) {
    return codePage(
        request, request.isPost() || rights.isPrivate() ? 403 : 200, ownPath(to), "", now);
  }

  private Answer codePage(Request request, int status, String to, String said, OffsetDateTime now) {
    Marked marked = marked(request);
    return marked.onto(Answer.page(status, pages.code(to, marked.forms(), said, now)));
  }

  private Answer nowhere(OffsetDateTime now) {
    return Answer.page(404, pages.message("web.nowhere", "", "/", now));
  }

  /** Only a page that there is, so that nobody is sent elsewhere. */
  private static String ownPath(String path) {
    Route route = Route.of(path);
    boolean isPage =
        route instanceof Route.Index
            || route instanceof Route.OfLot
            || route instanceof Route.OfJar;
    return isPage ? path : "/";
  }

  private boolean isKnown(Request request) {
    return rights.guesses().isEmpty() || visitors.isKnown(request.mark());
  }

  /** A browser with its mark, which goes out as a cookie if it is new. */
  private record Marked(String mark, boolean isNew, LivePages.Forms forms) {
    Answer onto(Answer answer) {
      return isNew ? answer.with("Set-Cookie", cookie(mark)) : answer;
    }
  }

  private Marked marked(Request request) {
    boolean isNew = request.mark().isEmpty();
    String mark = isNew ? visitors.newMark() : request.mark();
    return new Marked(mark, isNew, new LivePages.Forms(visitors.token(mark), isKnown(request)));
  }

  /** Lax, since a code is scanned from outside the browser and must still find its page. */
  private static String cookie(String mark) {
    return Request.COOKIE + "=" + mark + "; Path=/; HttpOnly; SameSite=Lax";
  }
}
