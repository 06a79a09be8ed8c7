package jarwright.cli;

import jarwright.files.Appended;
import jarwright.files.FoodTables;
import jarwright.files.HouseholdFolder;
import jarwright.files.Ledger;
import jarwright.files.LedgerFile;
import jarwright.files.PlanReader;
import jarwright.lot.LotCode;
import jarwright.pantry.Entry;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.plan.Kitchen;
import jarwright.problem.Nearest;
import jarwright.problem.Place;
import jarwright.problem.Problem;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.cli.Option;

/** The household's books, opened: its ledger as it stands, its kitchen, and what its clock says. */
final class Books {
  static final String BY = "by";

  private final Call call;
  private final String by;
  private final HouseholdFolder house;
  private final Optional<Kitchen> kitchen;
  private final LedgerFile file;
  private final ZoneId zone;
  private final OffsetDateTime now;
  private final Set<String> told = new HashSet<>();

  private Books(Call call) throws Usage, IOException, Refused {
    this.call = call;
    this.by = call.text(BY);
    this.file = LedgerFile.in(call.pantry());
    this.house = new HouseholdFolder(call.pantry());
    Optional<Path> kitchenFile = PlanRun.kitchenFile(call);
    this.kitchen =
        kitchenFile.isPresent()
            ? Optional.of(PlanReader.readKitchen(kitchenFile.get()))
            : Optional.empty();
    this.zone =
        kitchen.flatMap(Kitchen::zone).orElseGet(() -> call.surroundings().clock().getZone());
    this.now = OffsetDateTime.now(call.surroundings().clock().withZone(zone));
  }

  /**
   * Opens them; the ledger is read when it is asked for.
   *
   * @throws Usage where the name of who records cannot be written
   * @throws Refused where the household has no ledger yet, or its kitchen cannot be read
   */
  static Books open(Call call) throws Usage, IOException, Refused {
    if (!Files.exists(call.pantry().resolve(LedgerFile.NAME))) {
      throw new Refused(
          Place.wholeFile(call.pantry().toString()),
          "this household has no ledger yet",
          "make a kit first, or name the household's folder with --pantry");
    }
    return new Books(call);
  }

  /**
   * The same where the household may be new and have no ledger yet.
   *
   * @throws Usage where the name of who records cannot be written
   * @throws Refused where its kitchen cannot be read
   */
  static Books openOrBegin(Call call) throws Usage, IOException, Refused {
    return new Books(call);
  }

  /** Says who recorded an event. */
  static Option byOption() {
    return CommonOptions.withValue(null, BY, "NAME", "who records it");
  }

  /** Who records; may be empty. */
  String by() {
    return by;
  }

  HouseholdFolder house() {
    return house;
  }

  /** Empty where the household has described none. */
  Optional<Kitchen> kitchen() {
    return kitchen;
  }

  /** What the kitchen's clock says. */
  OffsetDateTime now() {
    return now;
  }

  /** Of the kitchen's clock. */
  ZoneId zone() {
    return zone;
  }

  /** The stock as the ledger now has it. */
  Pantry pantry() throws IOException, Refused {
    return ledger().pantry();
  }

  /** All events of the ledger as it now stands. */
  List<LedgerEvent> events() throws IOException, Refused {
    return ledger().events();
  }

  /** The stock as it will be once these are written. */
  Pantry after(List<Entry> entries) throws IOException, Refused {
    List<LedgerEvent> all = new ArrayList<>(events());
    entries.forEach(e -> all.add(new LedgerEvent(all.size() + 1L, e)));
    return Pantry.of(all, FoodTables::own);
  }

  /** What is odd is told once, however often it is read. */
  private Ledger ledger() throws IOException, Refused {
    Ledger ledger = file.read();
    ledger.remarks().stream().filter(told::add).forEach(r -> call.surroundings().err().println(r));
    return ledger;
  }

  /** Adds lines to the ledger; what the decision sees is what the ledger then holds. */
  List<LedgerEvent> record(LedgerFile.Decision decision) throws IOException, Refused {
    return told(file.append(decision));
  }

  /** The same for what hangs on single events. */
  List<LedgerEvent> correct(LedgerFile.Correction correction) throws IOException, Refused {
    return told(file.correct(correction));
  }

  private List<LedgerEvent> told(Appended appended) {
    appended.remarks().forEach(r -> call.surroundings().err().println(r));
    return appended.events();
  }

  /**
   * Reads a lot's code as it was typed.
   *
   * @throws Refused where it is mistyped
   */
  static LotCode code(String typed) throws Refused {
    try {
      return LotCode.parse(typed);
    } catch (IllegalArgumentException e) {
      throw new Refused(
          Place.wholeFile(NamedJars.shown(typed)), e.getMessage(), "copy it from the label");
    }
  }

  /**
   * The lot of that code.
   *
   * @throws Refused where the ledger has none such
   */
  static Lot lot(Pantry pantry, LotCode code) throws Refused {
    Optional<Lot> lot = pantry.lot(code);
    if (lot.isEmpty()) {
      throw new Refused(List.of(unknown(pantry, code)));
    }
    return lot.get();
  }

  /** That the ledger has no lot of that code, and which it may be. */
  static Problem unknown(Pantry pantry, LotCode code) {
    List<String> known = new ArrayList<>();
    pantry.lots().forEach(l -> known.add(l.code().toString()));
    List<String> sameDay =
        pantry.lots().stream()
            .map(Lot::code)
            .filter(c -> c.packed().equals(code.packed()))
            .map(LotCode::toString)
            .toList();
    Optional<String> near = Nearest.to(code.toString(), known);
    String remedy =
        sameDay.isEmpty()
            ? near.map(n -> "did you mean " + n + "?").orElse("jarwright shelf shows what there is")
            : "that day's lots: " + String.join(", ", sameDay);
    return new Problem(
        Place.wholeFile(code.toString()), "the ledger has no lot of this code", remedy);
  }
}
