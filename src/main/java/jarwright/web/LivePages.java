package jarwright.web;

import jarwright.lot.JarId;
import jarwright.page.PaperSize;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import jarwright.pantry.Jar;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.pantry.Sign;
import jarwright.problem.Refused;
import jarwright.record.Headline;
import jarwright.record.LotRecord;
import jarwright.record.RecordPages;
import jarwright.record.Tone;
import jarwright.render.Printer;
import java.io.IOException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The pages as they are served: those of the records, with forms, and the server's own few. */
final class LivePages {
  private static final String MESSAGE = "message.html.ftl";
  private static final String CODE = "code.html.ftl";

  private final Wording words;
  private final RecordPages.Manner manner;
  private final Printer printer;

  LivePages(Wording words, RecordPages.Manner manner, Printer printer) {
    this.words = words;
    this.manner = manner;
    this.printer = printer;
  }

  /**
   * What a page with forms needs.
   *
   * @param isKnown whether the browser may record something
   */
  record Forms(String token, boolean isKnown) {}

  String policy(OffsetDateTime now) {
    return ContentPolicy.of(print(pages(now).index(Pantry.EMPTY, SiteLinks.SERVED)));
  }

  byte[] index(Stock stock, OffsetDateTime now) {
    return print(pages(now).index(stock.pantry(), SiteLinks.SERVED));
  }

  byte[] lot(Stock stock, Lot lot, OffsetDateTime now) throws IOException, Refused {
    return print(pages(now).lot(stock.record(lot), SiteLinks.SERVED));
  }

  byte[] jar(Stock stock, Jar jar, Forms forms, OffsetDateTime now) throws IOException, Refused {
    LotRecord record = stock.record(stock.lot(jar.id().lot()).orElseThrow());
    Sheet sheet = pages(now).jar(record, jar, SiteLinks.SERVED);
    Map<String, Object> view = new LinkedHashMap<>(sheet.view());
    view.put("actions", actions(stock.pantry(), jar, forms, now));
    return print(new Sheet(sheet.template(), view, sheet.paper(), sheet.words(), sheet.about()));
  }

  private Map<String, Object> actions(Pantry pantry, Jar jar, Forms forms, OffsetDateTime now) {
    Map<String, Object> actions = new LinkedHashMap<>();
    actions.put("base", "/" + jar.id());
    actions.put("token", forms.token());
    actions.put("known", forms.isKnown());
    actions.put("possible", Action.possible(jar, now).stream().map(Action::word).toList());
    actions.put("signs", Stream.of(Sign.values()).map(this::sign).toList());
    TreeSet<String> shelves = new TreeSet<>();
    pantry.here().map(Jar::shelf).filter(s -> !s.isEmpty()).forEach(shelves::add);
    actions.put("shelves", List.copyOf(shelves));
    return actions;
  }

  private Map<String, Object> sign(Sign sign) {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("name", sign.word());
    one.put("ask", words.text("says.ask." + sign.word()));
    one.put("short", words.text("says.sign." + sign.word()));
    return one;
  }

  /**
   * The page that asks for the household code.
   *
   * @param to where the browser goes with the right one
   * @param said the key of what is said about the last try; may be empty
   */
  byte[] code(String to, Forms forms, String said, OffsetDateTime now) {
    Map<String, Object> view = common(words.text("web.code"), now);
    view.put("to", to);
    view.put("token", forms.token());
    view.put("said", said.isEmpty() ? "" : words.text(said));
    return print(sheet(CODE, view, words.text("web.code"), now));
  }

  /** A jar that no lot of the household holds: what its code alone says. */
  byte[] stranger(JarId jar, Optional<LocalDate> useBy, OffsetDateTime now) {
    Map<String, Object> view = common(words.text("web.stranger"), now);
    view.put("text", words.text("web.stranger-text"));
    view.put("says", strangerSays(useBy, now.toLocalDate()).view());
    Map<String, String> lines = new LinkedHashMap<>();
    lines.put("record.jar", jar.toString());
    lines.put("record.packed", words.date("long", jar.lot().packed()));
    useBy.ifPresent(d -> lines.put("record.use-by", words.date("long", d)));
    view.put("lines", lines(lines));
    return print(sheet(MESSAGE, view, words.text("web.stranger"), now));
  }

  /** Never good: nobody here knows how it was made. */
  private Headline strangerSays(Optional<LocalDate> useBy, LocalDate today) {
    String key = useBy.map(d -> d.isBefore(today) ? "late" : "by").orElse("undated");
    Map<String, Object> date = new LinkedHashMap<>();
    useBy.ifPresent(d -> date.put("date", words.date("long", d)));
    return new Headline(
        Tone.LOOK, words.text("web.stranger-" + key, date), words.text("web.stranger-detail"));
  }

  /**
   * A page that says one thing.
   *
   * @param key its title; its text has the same with {@code -text}
   * @param more what was found wrong; may be empty
   */
  byte[] message(String key, String more, String back, OffsetDateTime now) {
    Map<String, Object> view = common(words.text(key), now);
    view.put("text", words.text(key + "-text"));
    view.put("more", more);
    view.put("back", back.equals(SiteLinks.SERVED.index()) ? "" : back);
    view.put("lines", List.of());
    return print(sheet(MESSAGE, view, words.text(key), now));
  }

  private List<Map<String, Object>> lines(Map<String, String> values) {
    return values.entrySet().stream()
        .map(
            e -> {
              Map<String, Object> line = new LinkedHashMap<>();
              line.put("name", words.text(e.getKey()));
              line.put("value", e.getValue());
              return line;
            })
        .toList();
  }

  private Map<String, Object> common(String title, OffsetDateTime now) {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("title", title);
    view.put("household", "");
    view.put("asOf", now.toLocalDate().toString());
    view.put("indexHref", SiteLinks.SERVED.index());
    return view;
  }

  private RecordPages pages(OffsetDateTime now) {
    return new RecordPages(words, manner, now);
  }

  private Sheet sheet(String template, Map<String, Object> view, String title, OffsetDateTime now) {
    return new Sheet(
        template,
        view,
        PaperSize.A4,
        words,
        new Sheet.About(title, "", List.of(), now.toLocalDate()));
  }

  /** A printer serves one thread at a time. */
  private byte[] print(Sheet sheet) {
    synchronized (printer) {
      return printer.html(sheet);
    }
  }
}
