package jarwright.cli;

import jarwright.process.AcidKind;
import jarwright.process.AltitudeBand;
import jarwright.process.Headspace;
import jarwright.process.HeadspaceRule;
import jarwright.process.JarSize;
import jarwright.process.Product;
import jarwright.process.TableRow;
import jarwright.process.TestedProcess;
import jarwright.quantity.Altitude;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A product's tested processes as a small table, a column for each band of altitude. */
final class ProcessText {
  private static final int LEAST_FIRST = 37;
  private static final int COLUMN = 16;
  private static final String OWN = "*";
  private static final Pattern KEYED = Pattern.compile("([a-z0-9_-]+)=(.+)");

  private final Product product;
  private final Optional<Altitude> altitude;
  private final StringBuilder out = new StringBuilder();
  private int first = LEAST_FIRST;

  /**
   * @param altitude the kitchen's, whose band is marked; empty where nobody said
   */
  ProcessText(Product product, Optional<Altitude> altitude) {
    this.product = product;
    this.altitude = altitude;
  }

  /**
   * The lines, each ended.
   *
   * @param served a jar asked for that takes the time of the rows' size
   */
  String text(List<TableRow> rows, Optional<JarSize> served) {
    out.append(product.name()).append("  (").append(product.id()).append(")\n");
    Map<List<AltitudeBand>, Map<String, List<TableRow>>> tables = tables(rows);
    tables.values().stream()
        .flatMap(settings -> settings.keySet().stream())
        .forEach(setting -> first = Math.max(first, setting.length() + 4));
    tables.forEach(
        (bands, settings) -> {
          heading(bands);
          settings.forEach((setting, cells) -> line(setting, bands, cells));
        });
    served.ifPresent(
        jar ->
            out.append("  ")
                .append(jar)
                .append(": no time is printed; the ")
                .append(rows.get(0).jar())
                .append(" time is used (AIB 539 Guide 1)\n"));
    product.headspace().cases().forEach(this::headspace);
    if (product.acid().needsChoice()) {
      out.append("  acid in every jar: ")
          .append(String.join(" or ", product.acid().choices().stream().map(AcidKind::id).toList()))
          .append('\n');
    }
    if (!product.note().isEmpty()) {
      out.append("  note: ").append(words(product.note())).append('\n');
    }
    out.append("  source: ")
        .append(
            rows.stream().map(r -> r.source().place()).distinct().collect(Collectors.joining("; ")))
        .append('\n');
    return out.toString();
  }

  /**
   * Rows that share their bands share a table; a setting with several pressures has a line each.
   */
  private static Map<List<AltitudeBand>, Map<String, List<TableRow>>> tables(List<TableRow> rows) {
    Map<String, List<TableRow>> settings = new LinkedHashMap<>();
    for (TableRow row : rows) {
      String setting = row.method() + ", " + row.pack() + ", " + row.jar();
      int option = 1;
      while (settings.getOrDefault(key(setting, option), List.of()).stream()
          .anyMatch(r -> r.band().equals(row.band()))) {
        option++;
      }
      settings.computeIfAbsent(key(setting, option), s -> new ArrayList<>()).add(row);
    }
    Map<List<AltitudeBand>, Map<String, List<TableRow>>> tables = new LinkedHashMap<>();
    settings.forEach(
        (setting, cells) -> {
          List<AltitudeBand> bands =
              List.copyOf(new TreeSet<>(cells.stream().map(TableRow::band).toList()));
          tables.computeIfAbsent(bands, b -> new LinkedHashMap<>()).put(setting, cells);
        });
    return tables;
  }

  private static String key(String setting, int option) {
    return option == 1 ? setting : setting + " (choice " + option + ")";
  }

  private void heading(List<AltitudeBand> bands) {
    out.append(padded("  ft", first));
    bands.forEach(b -> out.append(padded(name(b) + mark(b), COLUMN)));
    end();
  }

  private void line(String setting, List<AltitudeBand> bands, List<TableRow> cells) {
    out.append(padded("  " + setting, first));
    for (AltitudeBand band : bands) {
      String cell =
          cells.stream()
              .filter(r -> r.band().equals(band))
              .map(ProcessText::cell)
              .findFirst()
              .orElse("");
      out.append(padded(cell + mark(band), COLUMN));
    }
    end();
  }

  private static String cell(TableRow row) {
    return row.process().map(ProcessText::cell).orElse("no");
  }

  private static String cell(TestedProcess process) {
    String held = process.pressure().map(p -> p.inPsi() + " psi ").orElse("");
    return held + process.minutes() + " min";
  }

  private String mark(AltitudeBand band) {
    return altitude.map(a -> band.holds(a.feetRoundedUp())).orElse(false) ? " " + OWN : "";
  }

  private static String name(AltitudeBand band) {
    return band.toFeet().isPresent()
        ? String.format(Locale.ROOT, "%,d–%,d", band.fromFeet(), band.toFeet().getAsInt())
        : String.format(Locale.ROOT, "%,d+", band.fromFeet());
  }

  private void headspace(HeadspaceRule.Case one) {
    Headspace space = one.headspace();
    String when = one.when().isEmpty() ? "" : " (" + one.when().replace('-', ' ') + ")";
    out.append("  headspace: ")
        .append(space.depth().text(Style.english(Units.BOTH), Rounding.NEAREST))
        .append(when)
        .append('\n');
  }

  /** The table's keyed remarks, as {@code presterile-jars=yes}, in words. */
  private static String words(String note) {
    return Arrays.stream(note.split("; "))
        .map(
            n -> {
              Matcher keyed = KEYED.matcher(n);
              return keyed.matches()
                  ? keyed.group(1).replaceAll("[-_]", " ") + ": " + keyed.group(2)
                  : n;
            })
        .collect(Collectors.joining("; "));
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }

  private void end() {
    int last = out.length();
    while (out.charAt(last - 1) == ' ') {
      last--;
    }
    out.setLength(last);
    out.append('\n');
  }
}
