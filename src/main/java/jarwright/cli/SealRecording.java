package jarwright.cli;

import jarwright.files.HouseholdFolder;
import jarwright.files.VerdictTable;
import jarwright.lot.LotCode;
import jarwright.pantry.Judge;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.LoadReport;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.pantry.Sealed;
import jarwright.pantry.Sealing;
import jarwright.pantry.VerdictRules;
import jarwright.plan.Kitchen;
import jarwright.problem.Place;
import jarwright.problem.Problem;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Judges what was told of loads, shows it and writes it down. */
final class SealRecording {
  private final Books books;
  private final VerdictRules rules;
  private final Judge judge;

  SealRecording(Books books) throws IOException, Refused {
    this.books = books;
    this.rules = VerdictTable.read();
    this.judge = new Judge(rules);
  }

  /** The reports judged; a refusal also says what is recorded of the same loads. */
  Sealed judged(List<LoadReport> reports, Pantry pantry) throws Refused, IOException {
    try {
      return Sealing.of(reports, pantry, judge, books.now(), books.by());
    } catch (Refused refused) {
      List<Problem> problems = new ArrayList<>(refused.problems());
      TreeSet<LotCode> lots = new TreeSet<>();
      reports.stream()
          .filter(r -> pantry.lot(r.lot()).filter(l -> isRecorded(l, r)).isPresent())
          .forEach(r -> lots.add(r.lot()));
      for (LotCode lot : lots) {
        problems.addAll(new RecordedLoads(books.events(), lot).all());
      }
      throw new Refused(problems);
    }
  }

  private static boolean isRecorded(Lot lot, LoadReport report) {
    int load = report.load();
    return lot.hasOutcome(load) || (report.seen().isPresent() && lot.load(load).isPresent());
  }

  /** What it comes to, in words. */
  String text(Sealed sealed) throws IOException, Refused {
    Units units = books.kitchen().map(Kitchen::units).orElse(Units.BOTH);
    Pantry after = books.after(sealed.entries());
    return new SealText(books.pantry(), after, rules, units, books.now()).of(sealed);
  }

  /** Nobody can change the lots' plans meanwhile, and what is written is what was shown. */
  List<LedgerEvent> record(List<LoadReport> reports, Sealed shown) throws Refused, IOException {
    HouseholdFolder.Registration held = books.house().register();
    try {
      return books.record(
          current -> {
            Sealed now = Sealing.of(reports, current, judge, books.now(), books.by());
            if (!now.equals(shown)) {
              throw new Refused(
                  Place.wholeFile("ledger"),
                  "these lots were changed meanwhile; nothing was recorded",
                  "look what is recorded, and seal again");
            }
            return now.entries();
          });
    } finally {
      held.close();
    }
  }
}
