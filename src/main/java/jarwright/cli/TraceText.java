package jarwright.cli;

import jarwright.batch.BatchRecord;
import jarwright.files.VerdictTable;
import jarwright.lot.LotCode;
import jarwright.pantry.Doubt;
import jarwright.pantry.Jar;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Lot;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Pantry;
import jarwright.pantry.Spoiled;
import jarwright.pantry.Standing;
import jarwright.pantry.Undone;
import jarwright.plan.Kitchen;
import jarwright.problem.Refused;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import jarwright.record.Reasons;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Jars traced, lot by lot, for a terminal. */
final class TraceText {
  private final Books books;
  private final Pantry pantry;
  private final List<LedgerEvent> events;
  private final Units units;
  private final VerdictText words;
  private final JarText text;

  /**
   * @param events what is recorded is told of these; none to leave it out
   */
  TraceText(Books books, Pantry pantry, List<LedgerEvent> events) throws IOException, Refused {
    this.books = books;
    this.pantry = pantry;
    this.events = events;
    this.units = books.kitchen().map(Kitchen::units).orElse(Units.BOTH);
    this.words = new VerdictText(units);
    this.text = new JarText(words, VerdictTable.read(), books.now());
  }

  String of(List<Jar> jars) throws IOException, Refused {
    Map<LotCode, List<Jar>> lots = new TreeMap<>();
    jars.forEach(j -> lots.computeIfAbsent(j.id().lot(), l -> new ArrayList<>()).add(j));
    StringBuilder out = new StringBuilder();
    for (Map.Entry<LotCode, List<Jar>> lot : lots.entrySet()) {
      out.append(lot(pantry.lot(lot.getKey()).orElseThrow(), lot.getValue())).append('\n');
    }
    if (lots.size() > 1) {
      out.append(ShelfText.jars(jars.size())).append(" of ").append(lots.size());
      out.append(" lots; jarwright trace LOT shows what is recorded of one\n");
    }
    return out.toString();
  }

  private String lot(Lot lot, List<Jar> jars) throws IOException, Refused {
    StringBuilder out = new StringBuilder();
    LotFacts facts = lot.facts();
    out.append(lot.code()).append("  ").append(JarText.food(facts));
    out.append(facts.pack().isEmpty() ? "" : ", " + facts.pack() + " pack").append('\n');
    List<String> about = new ArrayList<>();
    about.add(facts.packed().map(d -> "packed " + d).orElse("day of packing not known"));
    facts.useBy().ifPresent(d -> about.add("use by " + d));
    add(about, "from", facts.from());
    add(about, "lids", facts.lids());
    add(about, "note", facts.note());
    out.append(Indented.of("  ", "  ", String.join("; ", about)));
    out.append(Indented.of("  ", "  ", process(lot)));
    groups(jars).forEach((place, numbers) -> out.append(group(place, numbers)));
    List<Integer> others = new ArrayList<>(lot.byNumber().keySet());
    jars.forEach(j -> others.remove(Integer.valueOf(j.id().number())));
    if (!others.isEmpty()) {
      out.append("  others of the lot: ").append(JarNumbers.of(others)).append('\n');
    }
    history(lot, jars).forEach(l -> out.append("    ").append(l).append('\n'));
    return out.toString();
  }

  private static void add(List<String> about, String what, String said) {
    if (!said.isEmpty()) {
      about.add(what + " " + said);
    }
  }

  /** As it was planned; nothing is claimed for jars from an old list. */
  private String process(Lot lot) throws IOException, Refused {
    if (!lot.facts().madeHere()) {
      return words.wording().text("says.process.not-known") + said(lot.background().known());
    }
    if (lot.cancelled().isPresent()) {
      return "cancelled" + said(lot.cancelled().get().why()) + ": it was never made";
    }
    Optional<BatchRecord> record = books.house().record(lot.code());
    if (record.isEmpty()) {
      return "planned process: the record batches/" + lot.code() + ".yaml is missing";
    }
    BatchRecord.Processing processing = record.get().processing();
    Style style = Style.english(units);
    return "planned process: "
        + processing.method().id()
        + ", "
        + processing.tested().minutes()
        + " minutes"
        + processing.tested().pressure().map(p -> " at " + p.text(style)).orElse("")
        + ", for "
        + processing.altitude().text(style)
        + " ("
        + processing.source().place()
        + "); record batches/"
        + lot.code()
        + ".yaml";
  }

  private static String said(String more) {
    return more.isEmpty() ? "" : " (" + more + ")";
  }

  private Map<String, List<Integer>> groups(List<Jar> jars) {
    Map<String, List<Integer>> groups = new LinkedHashMap<>();
    for (Jar jar : jars) {
      String reasons = String.join(" ", text.reasons(jar));
      String place = text.standing(jar) + (reasons.isEmpty() ? "" : ". " + reasons);
      groups.computeIfAbsent(place, p -> new ArrayList<>()).add(jar.id().number());
    }
    return groups;
  }

  private static String group(String place, List<Integer> numbers) {
    String which = JarNumbers.of(numbers).toString();
    return Indented.of("  jars " + which + ": ", "      ", place);
  }

  /** What names one of the jars, or no jars at all, and what takes such a thing back. */
  private List<String> history(Lot lot, List<Jar> jars) {
    JarNumbers wanted = JarNumbers.of(jars.stream().map(j -> j.id().number()).toList());
    Set<Long> own = new TreeSet<>();
    List<String> lines = new ArrayList<>();
    Set<Long> undone = Undone.numbers(events);
    for (LedgerEvent event : events) {
      boolean ofJars = event.jars().isEmpty() || !event.jars().in(wanted).isEmpty();
      boolean ofLot = event.lot().filter(lot.code()::equals).isPresent() && ofJars;
      boolean undoes = event.what() instanceof Undone undo && own.contains(undo.event());
      if (ofLot || undoes) {
        own.add(event.number());
        String by = event.by().isEmpty() ? "" : " (" + event.by() + ")";
        String back = undone.contains(event.number()) ? " [taken back]" : "";
        lines.add(Events.line(event, words) + by + back);
      }
    }
    return lines;
  }

  /** What to check and do now that jars were found spoiled. */
  String spoiled(LotCode code, JarNumbers bad, Spoiled what) throws IOException, Refused {
    Lot lot = pantry.lot(code).orElseThrow();
    StringBuilder out = new StringBuilder();
    out.append(code).append('/').append(bad).append("  ").append(JarText.food(lot.facts()));
    out.append(": spoiled, ").append(Reasons.seen(words.wording(), what)).append("\n\n");
    out.append(Indented.of("", "", words.spoiled())).append('\n');
    others(lot, bad, out);
    List<Jar> missing = left(lot, bad, Standing.Missing.class);
    if (!missing.isEmpty()) {
      out.append("NOT FOUND. Do not eat them, should they turn up:\n");
      where(missing).forEach((place, numbers) -> out.append(group(place, numbers)));
    }
    List<Jar> eaten = left(lot, bad, Standing.Taken.class);
    if (!eaten.isEmpty()) {
      out.append(Indented.of("", "", SpoiledText.eaten()));
      where(eaten).forEach((place, numbers) -> out.append(group(place, numbers)));
    }
    return out.append(Indented.of("", "", SpoiledText.cause(code, lot.facts()))).toString();
  }

  private static List<Jar> left(Lot lot, JarNumbers bad, Class<? extends Standing> kind) {
    return lot.jars().stream()
        .filter(j -> kind.isInstance(j.standing()))
        .filter(j -> !bad.contains(j.id().number()))
        .toList();
  }

  /** The jars in the house: where they stand, and what to do with them. */
  private void others(Lot lot, JarNumbers bad, StringBuilder out) {
    List<Jar> here =
        lot.jars().stream()
            .filter(j -> j.standing().isHere() && !bad.contains(j.id().number()))
            .toList();
    if (here.isEmpty()) {
      out.append("No other jar of the lot is left in the house.\n");
      return;
    }
    boolean condemned = lot.doubt().filter(Doubt::condemns).isPresent();
    String advice = condemned ? SpoiledText.condemned() : SpoiledText.siblings();
    out.append(Indented.of("", "", advice.replace("trace LOT", "trace " + lot.code())));
    where(here).forEach((place, numbers) -> out.append(group(place, numbers)));
    String jars = named(lot.code(), here);
    if (condemned) {
      out.append("  then: jarwright toss ").append(jars).append(" --why TEXT\n");
    } else {
      out.append("  no sign seen on any: jarwright trace ").append(jars);
      out.append(" --looked-at none\n  any sign seen: jarwright trace JAR --looked-at");
      out.append(" with what you saw, as leaks,mold\n");
    }
  }

  private Map<String, List<Integer>> where(List<Jar> jars) {
    Map<String, List<Integer>> groups = new LinkedHashMap<>();
    jars.forEach(
        j -> groups.computeIfAbsent(text.place(j), p -> new ArrayList<>()).add(j.id().number()));
    return groups;
  }

  private static String named(LotCode code, List<Jar> jars) {
    return code
        + "/"
        + JarNumbers.of(jars.stream().map(j -> j.id().number()).toList())
            .toString()
            .replace(' ', ',');
  }
}
