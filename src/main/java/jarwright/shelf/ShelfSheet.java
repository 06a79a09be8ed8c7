package jarwright.shelf;

import jarwright.page.PaperSize;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import jarwright.pantry.Jar;
import jarwright.pantry.JarWord;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Origin;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** The shelf inventory sheet. */
public final class ShelfSheet {
  private static final String TEMPLATE = "shelf.ftl";
  private static final int MONTHS_SHOWN = 13;
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final Wording words;
  private final Function<LotFacts, String> productName;

  /**
   * @param productName the name of a lot's product in the sheet's language
   */
  public ShelfSheet(Wording words, Function<LotFacts, String> productName) {
    this.words = words;
    this.productName = productName;
  }

  /**
   * The sheet of the given jars.
   *
   * @param household printed at the head, may be empty
   * @param now what is due is reckoned from this day and hour
   */
  public Sheet of(Stream<Jar> jars, String household, OffsetDateTime now, PaperSize paper) {
    Inventory inventory = new Inventory(jars, now, words);
    LocalDate today = now.toLocalDate();
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("household", household);
    view.put("today", today.toString());
    view.put("jars", jars(inventory.lines().filter(ShelfLine::counts).toList()));
    List<ShelfLine> due = inventory.due();
    view.put("due", due.stream().map(this::line).toList());
    view.put("dueJars", jars(due));
    view.put("months", months(inventory.dueByMonth(YearMonth.from(today), MONTHS_SHOWN)));
    view.put("places", places(inventory));
    view.put("totals", totals(inventory));
    Sheet.About about = new Sheet.About(words.text("shelf.title"), household, List.of(), today);
    return new Sheet(TEMPLATE, view, paper, words, about);
  }

  private List<Map<String, Object>> places(Inventory inventory) {
    List<Map<String, Object>> places = new ArrayList<>();
    Map<String, Integer> sums = sums(inventory);
    Map<String, Integer> soFar = new TreeMap<>();
    inventory
        .places()
        .forEach(
            (place, lines) -> {
              Map<String, Object> one = new LinkedHashMap<>();
              one.put("name", place.name());
              one.put("calls", place.calls());
              one.put("jars", jars(lines));
              one.put("lines", lines.stream().map(l -> running(l, sums, soFar)).toList());
              places.add(one);
            });
    return places;
  }

  /** A line with the running total of its product and size. */
  private Map<String, Object> running(
      ShelfLine line, Map<String, Integer> sums, Map<String, Integer> soFar) {
    Map<String, Object> one = line(line);
    int own = line.numbers().size();
    boolean counts = line.counts();
    one.put("soFar", counts ? soFar.merge(food(line), own, Integer::sum) : own);
    one.put("ofAll", counts ? sums.get(food(line)) : own);
    return one;
  }

  private static int jars(List<ShelfLine> lines) {
    return lines.stream().mapToInt(l -> l.numbers().size()).sum();
  }

  private Map<String, Object> line(ShelfLine line) {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("place", line.place().name());
    one.put("calls", line.place().calls());
    one.put("product", productName.apply(line.facts()));
    one.put("pack", line.facts().pack());
    one.put("jar", line.facts().jar());
    one.put("lot", line.lot().toString());
    one.put("packed", line.facts().packed().map(LocalDate::toString).orElse(""));
    one.put("useBy", line.useBy().map(LocalDate::toString).orElse(""));
    Optional<OffsetDateTime> recan = line.moment().filter(t -> line.word() == JarWord.RECAN);
    one.put("recanDay", recan.map(t -> t.toLocalDate().toString()).orElse(""));
    one.put("recanTime", recan.map(CLOCK::format).orElse(""));
    Optional<OffsetDateTime> look = line.moment().filter(t -> line.word() == JarWord.COOLING);
    one.put("lookDay", look.map(t -> t.toLocalDate().toString()).orElse(""));
    one.put("lookTime", look.map(CLOCK::format).orElse(""));
    one.put("says", says(line));
    one.put("stop", line.word() == JarWord.DO_NOT_EAT_YET || line.word() == JarWord.UNVOUCHED);
    one.put("stands", line.stands());
    one.put("numbers", line.numbers());
    one.put("vouched", vouched(line));
    one.put("from", line.facts().from());
    return one;
  }

  /** What the jars show; nothing where they may stand there and be eaten until their date. */
  private String says(ShelfLine line) {
    return switch (line.word()) {
      case THROW_AWAY, RECAN, COOLING, REFRIGERATOR, FREEZER, KEEPS -> "";
      default -> words.text("says." + line.word().word());
    };
  }

  /** By whose word they may be eaten; empty for jars whose process is on record. */
  private String vouched(ShelfLine line) {
    return line.origin() instanceof Origin.ByWord by
        ? words.text("says.by-word.short", Map.of("who", by.vouched().who()))
        : "";
  }

  private List<Map<String, Object>> months(Map<YearMonth, Integer> due) {
    List<Map<String, Object>> months = new ArrayList<>();
    due.forEach(
        (month, jars) -> {
          Map<String, Object> one = new LinkedHashMap<>();
          one.put("name", words.text("month.short." + month.getMonthValue()));
          one.put("year", String.valueOf(month.getYear()));
          one.put("jars", jars);
          months.add(one);
        });
    return months;
  }

  /** Jars of each product and size that are fit to use, by product. */
  private List<Map<String, Object>> totals(Inventory inventory) {
    Map<String, Integer> sums = sums(inventory);
    List<Map<String, Object>> totals = new ArrayList<>();
    sums.forEach(
        (key, jars) -> {
          String[] parts = key.split("\t", -1);
          Map<String, Object> one = new LinkedHashMap<>();
          one.put("product", parts[0]);
          one.put("jar", parts[1]);
          one.put("jars", jars);
          totals.add(one);
        });
    return totals;
  }

  private Map<String, Integer> sums(Inventory inventory) {
    Map<String, Integer> sums = new TreeMap<>();
    inventory
        .lines()
        .filter(ShelfLine::counts)
        .forEach(l -> sums.merge(food(l), l.numbers().size(), Integer::sum));
    return sums;
  }

  private String food(ShelfLine line) {
    return productName.apply(line.facts()) + "\t" + line.facts().jar();
  }
}
