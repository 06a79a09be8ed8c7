package jarwright.files;

import jarwright.process.JarSize;
import jarwright.process.Source;
import jarwright.process.Syrup;
import jarwright.process.SyrupRow;
import jarwright.quantity.Fraction;
import jarwright.quantity.Volume;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the rows of syrups.csv, each for itself. */
final class SyrupRows {
  static final List<String> COLUMNS =
      List.of("syrup", "approx_sugar_pct", "load", "water_cups", "sugar_cups", "use", "source");
  private static final Pattern LOAD = Pattern.compile("([1-9])-(pint|quart)");

  private SyrupRows() {}

  static SyrupRow syrup(TableText.Row row) {
    Matcher load = LOAD.matcher(row.get("load"));
    if (!load.matches()) {
      throw new IllegalArgumentException("load \"" + row.get("load") + "\" is not like 9-pint");
    }
    return new SyrupRow(
        row.word("syrup", Syrup::named, Syrup.ids()),
        row.number("approx_sugar_pct"),
        Integer.parseInt(load.group(1)),
        JarSize.named(load.group(2)).orElseThrow(),
        Volume.of(Fraction.parse(row.get("water_cups")), Volume.Unit.CUP),
        Volume.of(Fraction.parse(row.get("sugar_cups")), Volume.Unit.CUP),
        new Source(row.get("source")));
  }
}
