package jarwright.cli;

import jarwright.page.Wording;
import jarwright.process.AltitudeBand;
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
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A product's tested processes as a small table, a column for each band of altitude. */
final class ProcessText {
  private static final int LEAST_FIRST = 37;
  private static final int COLUMN = 16;
  private static final String OWN = "*";
  private static final String MARGIN = "  ";
  private static final Pattern KEYED = Pattern.compile("([a-z0-9_-]+)=(.+)");

  private final Product product;
  private final String name;
  private final Optional<Altitude> altitude;
  private final Wording words;
  private final StringBuilder out = new StringBuilder();
  private int first = LEAST_FIRST;

  /**
   * @param name of the product in the language of the words
   * @param altitude the kitchen's, whose band is marked; empty where nobody said
   */
  ProcessText(Product product, String name, Optional<Altitude> altitude, Wording words) {
    this.product = product;
    this.name = name;
    this.altitude = altitude;
    this.words = words;
  }

  /**
   * The lines, each ended.
   *
   * @param served a jar asked for that takes the time of the rows' size
   */
  String text(List<TableRow> rows, Optional<JarSize> served) {
    out.append(name).append("  (").append(product.id()).append(")\n");
    Map<List<AltitudeBand>, Map<String, List<TableRow>>> tables = tables(rows);
    tables.values().stream()
        .flatMap(settings -> settings.keySet().stream())
        .forEach(setting -> first = Math.max(first, setting.length() + 4));
    tables.forEach(
        (bands, settings) -> {
          heading(bands);
          settings.forEach((setting, cells) -> line(setting, bands, cells));
        });
    if (rows.stream().allMatch(r -> r.process().isEmpty())) {
      say("process.closed-all", Map.of());
    } else if (rows.stream().anyMatch(r -> r.process().isEmpty())) {
      say("process.closed-some", Map.of());
    }
    served.ifPresent(
        jar -> say("process.served", Map.of("jar", jar(jar), "printed", jar(rows.get(0).jar()))));
    product.headspace().cases().forEach(this::headspace);
    if (product.acid().needsChoice()) {
      say(
          "process.acid",
          Map.of(
              "acids",
              product.acid().choices().stream()
                  .map(kind -> words.text("acid." + kind.name()))
                  .collect(Collectors.joining(" " + words.text("process.or") + " "))));
    }
    if (rows.stream().anyMatch(r -> r.process().filter(p -> p.needsSterileJars()).isPresent())) {
      say("process.sterile", Map.of());
    }
    String note = note();
    if (!note.isEmpty()) {
      say("process.note", Map.of("note", note));
    }
    say(
        "process.source-line",
        Map.of(
            "source",
            rows.stream()
                .map(r -> r.source().place())
                .distinct()
                .collect(Collectors.joining("; "))));
    return out.toString();
  }

  private void say(String key, Map<String, String> values) {
    out.append(MARGIN).append(words.text(key, values)).append('\n');
  }

  private String jar(JarSize jar) {
    return words.text("jar." + jar.id() + ".one");
  }

  /**
   * Rows that share their bands share a table; a setting with several pressures has a line each.
   */
  private Map<List<AltitudeBand>, Map<String, List<TableRow>>> tables(List<TableRow> rows) {
    Map<String, List<TableRow>> settings = new LinkedHashMap<>();
    for (TableRow row : rows) {
      String setting =
          words.text("process.method." + row.method().id())
              + ", "
              + words.text("process.pack." + row.pack().id())
              + ", "
              + jar(row.jar());
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

  private String key(String setting, int option) {
    return option == 1
        ? setting
        : setting + " (" + words.text("process.choice", Map.of("n", option)) + ")";
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
          cells.stream().filter(r -> r.band().equals(band)).map(this::cell).findFirst().orElse("");
      out.append(padded(cell + mark(band), COLUMN));
    }
    end();
  }

  private String cell(TableRow row) {
    return row.process().map(this::cell).orElseGet(() -> words.text("process.closed"));
  }

  private String cell(TestedProcess process) {
    return process
        .pressure()
        .map(
            p ->
                words.text(
                    "process.pressure",
                    Map.of("psi", String.valueOf(p.inPsi()), "minutes", process.minutes())))
        .orElseGet(() -> words.text("process.minutes", Map.of("minutes", process.minutes())));
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
    String space = one.headspace().depth().text(Style.english(Units.BOTH), Rounding.NEAREST);
    if (one.when().isEmpty()) {
      say("process.headspace", Map.of("space", space));
    } else {
      String when = words.text("process.when." + one.when());
      say("process.headspace-when", Map.of("space", space, "when", when));
    }
  }

  /** The table's remarks for the cook; what is keyed is for the reckoning, and said elsewhere. */
  private String note() {
    return Arrays.stream(product.note().split("; "))
        .filter(n -> !KEYED.matcher(n).matches())
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
