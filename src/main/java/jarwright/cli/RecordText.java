package jarwright.cli;

import jarwright.lot.LotCode;
import jarwright.page.Sheet;
import jarwright.pantry.Jar;
import jarwright.pantry.Lot;
import jarwright.plan.Kitchen;
import jarwright.problem.Refused;
import jarwright.record.Headline;
import jarwright.record.Headlines;
import jarwright.record.Links;
import jarwright.record.LotRecord;
import jarwright.record.RecordPages;
import jarwright.render.WordBundle;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The record pages as lines of a terminal: they say the same. */
final class RecordText {
  private static final String ENGLISH = "en";
  private static final int NAMES = 18;

  private static final Links NONE =
      new Links() {
        @Override
        public String index() {
          return "";
        }

        @Override
        public String lot(LotCode lot) {
          return "";
        }

        @Override
        public Optional<String> jar(Jar jar) {
          return Optional.empty();
        }
      };

  private final RecordPages pages;
  private final Headlines headlines;
  private final StringBuilder out = new StringBuilder();

  RecordText(Optional<Kitchen> kitchen, OffsetDateTime now) throws IOException, Refused {
    this.pages = new RecordPages(WordBundle.load(ENGLISH), PageManner.of(kitchen), now);
    this.headlines = new Headlines(WordBundle.load(ENGLISH), now);
  }

  /** What is first and in large words on the jar's page. */
  Headline headline(Jar jar) {
    return headlines.of(jar);
  }

  /** The whole record of a jar. */
  String jar(LotRecord record, Jar jar) {
    out.setLength(0);
    Map<String, Object> view = pages.jar(record, jar, NONE).view();
    out.append(view.get("id")).append("  ").append(head(view)).append('\n');
    Map<?, ?> headline = (Map<?, ?>) view.get("headline");
    out.append("  ").append(upper(headline.get("words"))).append('\n');
    wrapped(headline.get("detail"));
    for (Object reason : (List<?>) view.get("reasons")) {
      Map<?, ?> said = (Map<?, ?>) reason;
      wrapped(said.get("text") + sourced((List<?>) said.get("sources")));
    }
    line("shelf", view.get("shelf"));
    facts(view);
    lines(view.get("outcome"));
    return out.toString();
  }

  /** The record of a lot: its jars by what is to be said of them. */
  String lot(LotRecord record) {
    out.setLength(0);
    Lot lot = record.lot();
    Sheet sheet = pages.lot(record, NONE);
    Map<String, Object> view = sheet.view();
    out.append(lot.code()).append("  ").append(head(view)).append('\n');
    for (Object group : (List<?>) view.get("groups")) {
      Map<?, ?> one = (Map<?, ?>) group;
      Map<?, ?> headline = (Map<?, ?>) one.get("headline");
      StringBuilder numbers = new StringBuilder();
      for (Object number : (List<?>) one.get("numbers")) {
        numbers.append(' ').append(((Map<?, ?>) number).get("number"));
      }
      out.append("  ").append(upper(headline.get("words"))).append(':').append(numbers);
      String place = String.valueOf(one.get("place"));
      out.append(place.isEmpty() ? "" : ", " + place).append('\n');
    }
    facts(view);
    return out.toString();
  }

  private static String head(Map<String, Object> view) {
    return Stream.of("product", "pack", "jar")
        .map(key -> String.valueOf(view.get(key)))
        .filter(word -> !word.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private static String upper(Object words) {
    return String.valueOf(words).toUpperCase(Locale.ROOT);
  }

  private static String sourced(List<?> sources) {
    return sources.stream().map(s -> " (" + s + ")").collect(Collectors.joining());
  }

  private void wrapped(Object text) {
    if (!String.valueOf(text).isEmpty()) {
      out.append(Indented.of("  ", "  ", String.valueOf(text)));
    }
  }

  private void facts(Map<String, Object> view) {
    line("packed", view.get("packed"));
    line("use by", view.get("useBy"));
    line("from", view.get("from"));
    lines(view.get("facts"));
  }

  private void lines(Object lines) {
    for (Object line : (List<?>) lines) {
      Map<?, ?> one = (Map<?, ?>) line;
      line(String.valueOf(one.get("name")).toLowerCase(Locale.ROOT), one.get("value"));
    }
  }

  private void line(String name, Object value) {
    if (value != null && !String.valueOf(value).isEmpty()) {
      String padded = name + " ".repeat(Math.max(1, NAMES - name.length()));
      out.append(Indented.of("  " + padded, "  " + " ".repeat(NAMES), String.valueOf(value)));
    }
  }
}
