package jarwright.cli;

import jarwright.pantry.Difference;
import jarwright.pantry.Jar;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.pantry.StockTake;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** In what a stock-take and the ledger differ, for a terminal. */
final class CountText {
  private final StockTake count;
  private final List<Difference> differences;
  private final Pantry pantry;
  private final JarText text;

  CountText(StockTake count, List<Difference> differences, Pantry pantry, JarText text) {
    this.count = count;
    this.differences = differences;
    this.pantry = pantry;
    this.text = text;
  }

  String of() {
    StringBuilder out = new StringBuilder();
    for (Difference.Kind kind : Difference.Kind.values()) {
      List<Difference> own = differences.stream().filter(d -> d.kind() == kind).toList();
      if (!own.isEmpty()) {
        out.append(title(kind)).append('\n');
        own.forEach(d -> out.append("  ").append(line(d)).append('\n'));
      }
    }
    if (!count.strangers().isEmpty()) {
      out.append("NOT IN THE LEDGER: bring them in with jarwright import\n");
      new TreeMap<>(count.strangers())
          .forEach((what, n) -> out.append("  " + ShelfText.jars(n) + " of " + what + "\n"));
    }
    if (out.isEmpty()) {
      out.append("The ledger agrees with the stock-take.\n");
    }
    out.append(ShelfText.jars(count.seen())).append(" of the ledger's lots counted");
    if (count.leftOut() > 0) {
      out.append("; ").append(count.leftOut()).append(count.leftOut() == 1 ? " row" : " rows");
      out.append(" left empty, so not compared");
    }
    return out.append(".\n").toString();
  }

  private static String title(Difference.Kind kind) {
    return switch (kind) {
      case MISSING -> "MISSING: in the ledger, not on the shelf";
      case MOVED -> "MOVED: elsewhere than the ledger has them";
      case FOUND -> "SURPLUS: on the shelf, though the ledger has them gone";
      case TURNED_UP ->
          "DO NOT EAT: recorded as gone, and here again. Throw them away unopened, or see:"
              + " jarwright trace JAR";
      case NOT_FOR_SHELF ->
          "DO NOT EAT from these: they belong in the trash, refrigerator or canner. See: jarwright"
              + " shelf --due";
      case NOT_SEALED -> "RESULTS NOT RECORDED: do not eat. Run: jarwright seal LOT";
      case IMPOSSIBLE -> "CANNOT BE: read their labels again";
      case NO_SUCH_JAR -> "NO SUCH JAR in the lot: read their labels again";
      case NO_SUCH_LOT -> "NO SUCH LOT in the ledger: is it another household's?";
    };
  }

  private String line(Difference difference) {
    String jars = difference.lot() + "/" + difference.jars();
    Optional<Lot> lot = pantry.lot(difference.lot());
    String food = lot.map(l -> "  " + JarText.food(l.facts())).orElse("");
    Optional<Jar> first =
        lot.flatMap(l -> difference.jars().stream().boxed().findFirst().flatMap(l::jar));
    String was = first.filter(j -> difference.was().isPresent()).map(this::was).orElse("");
    String seen = difference.place().isEmpty() ? "" : ", seen at " + difference.place();
    return jars + food + was + seen;
  }

  private String was(Jar jar) {
    return ": " + text.standing(jar);
  }
}
