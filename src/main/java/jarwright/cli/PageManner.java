package jarwright.cli;

import jarwright.files.VerdictTable;
import jarwright.pantry.VerdictRule;
import jarwright.plan.Kitchen;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import jarwright.record.RecordPages;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** How a household's record pages are written: its name, its language, its units. */
final class PageManner {
  private static final String ENGLISH = "en";

  private PageManner() {}

  /** The kitchen's language; English where none is described. */
  static String language(Optional<Kitchen> kitchen) {
    return kitchen.map(Kitchen::language).orElse(ENGLISH);
  }

  static RecordPages.Manner of(Optional<Kitchen> kitchen) throws IOException, Refused {
    ProductNames names = new ProductNames(language(kitchen));
    Map<String, VerdictRule> rules =
        VerdictTable.read().all().stream()
            .collect(Collectors.toMap(VerdictRule::id, Function.identity()));
    return new RecordPages.Manner(
        kitchen.map(Kitchen::household).orElse(""),
        kitchen.map(Kitchen::units).orElse(Units.BOTH),
        names::of,
        id -> Optional.ofNullable(rules.get(id)));
  }
}
