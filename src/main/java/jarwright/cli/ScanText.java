package jarwright.cli;

import jarwright.lot.JarId;
import jarwright.pantry.Jar;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.pantry.Standing;
import jarwright.problem.Refused;
import jarwright.record.Headline;
import jarwright.web.Stock;
import java.io.IOException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What scanned codes are, beside what the ledger has of them. */
final class ScanText {
  private final Stock stock;
  private final RecordText records;
  private final JarText jars;
  private final OffsetDateTime now;
  private final StringBuilder out = new StringBuilder();

  ScanText(Stock stock, RecordText records, JarText jars, OffsetDateTime now) {
    this.stock = stock;
    this.records = records;
    this.jars = jars;
    this.now = now;
  }

  /** One code: all that is known of it. */
  String one(SeenCode code) throws IOException, Refused {
    out.setLength(0);
    Optional<Jar> jar = code.jar().flatMap(stock::jar);
    Optional<Lot> lot = code.lot().flatMap(stock::lot);
    if (jar.isPresent() && lot.isPresent()) {
      out.append(records.jar(stock.record(lot.get()), jar.get()));
      differs(code, jar.get()).ifPresent(d -> out.append("  ! ").append(d).append('\n'));
    } else if (lot.isPresent() && code.jar().isEmpty()) {
      out.append(records.lot(stock.record(lot.get())));
    } else {
      stranger(code);
    }
    return out.toString();
  }

  /** Several codes, as of a shelf: a line each, what wants something done first. */
  String several(List<SeenCode> codes) {
    out.setLength(0);
    Map<Jar, SeenCode> known = new LinkedHashMap<>();
    List<SeenCode> others = new ArrayList<>();
    for (SeenCode code : codes) {
      Optional<Jar> jar = code.jar().flatMap(stock::jar);
      jar.ifPresentOrElse(j -> known.put(j, code), () -> others.add(code));
    }
    known.keySet().stream()
        .sorted(
            Comparator.comparing((Jar j) -> records.headline(j).tone())
                .thenComparing(this::due)
                .thenComparing(Jar::id))
        .forEach(
            j -> {
              line(j);
              differs(known.get(j), j).ifPresent(d -> out.append("    ! ").append(d).append('\n'));
            });
    others.forEach(this::stranger);
    return out.toString();
  }

  /**
   * What is not as the ledger has it on a shelf that the picture shows whole; nothing is recorded.
   */
  String compared(String shelf, List<SeenCode> codes) {
    out.setLength(0);
    Set<JarId> seen = new TreeSet<>();
    codes.forEach(c -> c.jar().ifPresent(seen::add));
    Pantry pantry = stock.pantry();
    List<Jar> there = pantry.here().filter(j -> j.shelf().equalsIgnoreCase(shelf)).toList();
    List<JarId> unseen =
        there.stream().map(Jar::id).filter(id -> !seen.contains(id)).sorted().toList();
    List<Jar> elsewhere =
        seen.stream()
            .flatMap(id -> pantry.jar(id).stream())
            .filter(j -> !j.shelf().equalsIgnoreCase(shelf))
            .toList();
    out.append("At ").append(shelf).append(" the ledger has ").append(there.size());
    out.append(", and the picture shows ").append(seen.size()).append(".\n");
    if (!unseen.isEmpty()) {
      out.append("  not in the picture: ").append(NamedJars.shown(unseen)).append('\n');
    }
    for (Jar jar : elsewhere) {
      out.append("  in the picture, but the ledger has it ").append(jars.place(jar)).append(": ");
      out.append(jar.id()).append('\n');
    }
    if (unseen.isEmpty() && elsewhere.isEmpty()) {
      out.append("  They are the same.\n");
    }
    return out.toString();
  }

  private LocalDate due(Jar jar) {
    return jar.facts().useBy().orElse(LocalDate.MIN);
  }

  private void line(Jar jar) {
    Headline says = records.headline(jar);
    out.append(jar.id()).append("  ").append(says.words().toUpperCase(Locale.ROOT)).append("  ");
    out.append(JarText.food(jar.facts())).append(", ").append(jars.place(jar)).append('\n');
  }

  /** Where the label and the ledger do not say the same. */
  private Optional<String> differs(SeenCode code, Jar jar) {
    boolean isOwn = code.useBy().equals(jar.facts().useBy()) || code.useBy().equals(jar.eatBy(now));
    if (code.useBy().isPresent() && !isOwn) {
      return Optional.of(
          "the label says use by " + code.useBy().get() + ": it is not of the batch as recorded");
    }
    Standing standing = jar.standingAt(now);
    return standing.isHere() || standing instanceof Standing.Planned
        ? Optional.empty()
        : Optional.of("it is recorded as " + jars.place(jar) + ", and yet here it is");
  }

  /** What no lot of the ledger holds still says what its code says. */
  private void stranger(SeenCode code) {
    if (code.isMistyped()) {
      out.append(NamedJars.shown(code.text())).append("  ").append(code.fault()).append('\n');
      return;
    }
    if (code.lot().isEmpty()) {
      out.append("not a jar's code: ").append(shown(code.text())).append('\n');
      return;
    }
    String name = code.jar().map(JarId::toString).orElse(code.lot().get().toString());
    out.append(name).append("  NOT IN THIS LEDGER; its code says:\n");
    out.append("  packed ").append(code.lot().get().packed());
    code.useBy().ifPresent(d -> out.append(", use by ").append(d));
    out.append('\n');
    if (!code.rest().isEmpty()) {
      out.append(Indented.of("  ", "  ", code.rest().toLowerCase(Locale.ROOT)));
    }
    code.useBy()
        .filter(d -> d.isBefore(now.toLocalDate()))
        .ifPresent(d -> out.append("  ! that date has passed\n"));
    out.append(
        "  Ask the people who made it how it was canned. If you cannot find out, do not eat it.\n");
  }

  private static String shown(String text) {
    String line = text.replaceAll("\\p{Cntrl}+", " ");
    return line.length() <= 200 ? line : line.substring(0, 200) + "…";
  }
}
