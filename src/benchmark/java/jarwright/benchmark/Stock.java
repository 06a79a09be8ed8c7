package jarwright.benchmark;

import jarwright.lot.LotCode;
import jarwright.lot.UseBy;
import jarwright.pantry.Entry;
import jarwright.pantry.Imported;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.JarStep;
import jarwright.pantry.LotFacts;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/** What an invented cannery's ledger says: every lot brought in, then its jars moved one by one. */
final class Stock {
  private Stock() {}

  /** The lot on its shelf, with all its jars. */
  static Entry arrival(int lot) {
    LotCode code = Jars.lot(lot);
    LotFacts facts =
        new LotFacts(
            "tomatoes-whole-in-water",
            "Tomatoes, whole or halved",
            "raw",
            "quart",
            Optional.of(code.packed()),
            Optional.of(UseBy.after(code.packed(), UseBy.USUAL_MONTHS).date()),
            "cellar " + (char) ('A' + lot % 26) + lot / 26 % 10,
            "garden, south bed",
            "",
            "",
            false);
    return Entry.of(
        when(code), code, JarNumbers.range(1, Jars.PER_LOT), new Imported(facts, ""), "");
  }

  /** Event {@code number} of the ledger, from 0: the first of each hundred is an arrival. */
  static Entry event(int number) {
    int lot = number / Jars.PER_LOT;
    int jar = number % Jars.PER_LOT;
    if (jar == 0) {
      return arrival(lot);
    }
    LotCode code = Jars.lot(lot);
    JarStep moved = JarStep.moved("cellar Z" + jar % 10);
    return Entry.of(when(code), code, JarNumbers.of(jar), moved, "");
  }

  private static OffsetDateTime when(LotCode code) {
    return code.packed().atTime(LocalTime.of(18, 30)).atOffset(ZoneOffset.UTC);
  }
}
