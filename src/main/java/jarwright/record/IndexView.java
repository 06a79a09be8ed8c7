package jarwright.record;

import jarwright.page.Wording;
import jarwright.pantry.Jar;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.pantry.Standing;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** The jars in the house by urgency, by shelf and by use-by date, and all lots. */
final class IndexView {
  private static final Comparator<JarGroup> FIRST_TO_USE =
      Comparator.<JarGroup, LocalDate>comparing(g -> g.facts().useBy().orElse(LocalDate.MAX))
          .thenComparing(g -> g.headline().tone())
          .thenComparing(g -> g.jars().get(0).id());

  private final Wording words;
  private final LotView lots;
  private final Links links;
  private final List<JarGroup> groups = new ArrayList<>();

  IndexView(Pantry pantry, Headlines headlines, Wording words, LotView lots, Links links) {
    this.words = words;
    this.lots = lots;
    this.links = links;
    for (Lot lot : pantry.lots()) {
      groups.addAll(JarGroup.of(lot, IndexView::isListed, headlines, this::place));
    }
    groups.sort(FIRST_TO_USE);
  }

  /** Jars in the house, and those that are to come or have been lost. */
  private static boolean isListed(Jar jar) {
    Standing standing = jar.standing();
    return standing.isHere()
        || standing instanceof Standing.Planned
        || standing instanceof Standing.Missing;
  }

  /** The shelf by name; where a jar is to stand, while it is planned. */
  private String place(Jar jar) {
    boolean planned = jar.standing() instanceof Standing.Planned;
    boolean shelved = jar.standing() instanceof Standing.OnShelf;
    String shelf = planned ? jar.facts().shelf() : jar.shelf();
    if (!shelf.isEmpty()) {
      return shelf;
    }
    return planned || shelved
        ? words.text("record.place.none")
        : words.text("record.place." + jar.standing().kind().word());
  }

  List<Map<String, Object>> urgent() {
    return groups.stream().filter(g -> g.headline().tone().isUrgent()).map(this::row).toList();
  }

  List<Map<String, Object>> places() {
    return sections(
        g -> g.place(),
        String.CASE_INSENSITIVE_ORDER.thenComparing(Comparator.naturalOrder()),
        p -> p);
  }

  List<Map<String, Object>> months() {
    YearMonth never = YearMonth.from(LocalDate.MAX);
    return sections(
        g -> g.facts().useBy().map(YearMonth::from).orElse(never),
        Comparator.<YearMonth>naturalOrder(),
        m -> m.equals(never) ? words.text("record.no-date") : words.date("month", m.atDay(1)));
  }

  /** With {@code name}, {@code jars} and {@code rows}. */
  private <K> List<Map<String, Object>> sections(
      Function<JarGroup, K> by, Comparator<K> order, Function<K, String> name) {
    Map<K, List<JarGroup>> sorted = new TreeMap<>(order);
    groups.forEach(g -> sorted.computeIfAbsent(by.apply(g), k -> new ArrayList<>()).add(g));
    List<Map<String, Object>> sections = new ArrayList<>();
    sorted.forEach(
        (key, list) -> {
          Map<String, Object> section = new LinkedHashMap<>();
          section.put("name", name.apply(key));
          section.put("jars", list.stream().mapToInt(g -> g.jars().size()).sum());
          section.put("rows", list.stream().map(this::row).toList());
          sections.add(section);
        });
    return sections;
  }

  private Map<String, Object> row(JarGroup group) {
    Map<String, Object> row = new LinkedHashMap<>(lots.facts(group.lot()));
    row.put("href", links.lot(group.lot().code()));
    row.put("place", group.place());
    row.put("headline", group.headline().view());
    row.put("numbers", group.numbers(links));
    return row;
  }

  /** The latest first, with how many jars were packed and are here. */
  List<Map<String, Object>> lots(Pantry pantry) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (Lot lot : pantry.lots().stream().filter(l -> l.cancelled().isEmpty()).toList()) {
      Map<String, Object> one = new LinkedHashMap<>(lots.facts(lot));
      one.put("href", links.lot(lot.code()));
      one.put("jars", lot.jars().size());
      one.put("here", (int) lot.jars().stream().filter(j -> j.standing().isHere()).count());
      all.add(0, one);
    }
    return all;
  }
}
