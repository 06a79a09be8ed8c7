package jarwright.cli;

import jarwright.files.HouseholdFolder;
import jarwright.files.LedgerFile;
import jarwright.files.VerdictTable;
import jarwright.lot.JarId;
import jarwright.pantry.Deed;
import jarwright.pantry.Entry;
import jarwright.pantry.Jar;
import jarwright.pantry.JarReport;
import jarwright.pantry.JarStep;
import jarwright.pantry.Pantry;
import jarwright.pantry.VerdictRules;
import jarwright.pantry.Vouched;
import jarwright.problem.Place;
import jarwright.problem.Problem;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import jarwright.web.Household;
import jarwright.web.Stock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A household whose ledger other runs of the program may be writing to meanwhile. */
final class FiledHousehold implements Household {
  private final HouseholdFolder house;
  private final LedgerFile ledger;
  private final Path file;
  private final VerdictRules rules;
  private Read last = new Read(new Stamp(FileTime.fromMillis(0), -1), null);

  /** A ledger only grows, so its length tells even two changes within one tick of the clock. */
  private record Stamp(FileTime changed, long length) {}

  private record Read(Stamp stamp, Stock stock) {}

  FiledHousehold(Path folder) throws IOException, Refused {
    this.rules = VerdictTable.read();
    this.house = new HouseholdFolder(folder);
    this.ledger = LedgerFile.in(folder);
    this.file = folder.resolve(LedgerFile.NAME);
  }

  /** Reads the ledger again only where it has changed since. */
  @Override
  public synchronized Stock stock() throws IOException, Refused {
    Stamp stamp = stamp();
    if (!stamp.equals(last.stamp())) {
      last = new Read(stamp, new FiledStock(house, ledger.read().events()));
    }
    return last.stock();
  }

  private Stamp stamp() throws IOException {
    try {
      return new Stamp(Files.getLastModifiedTime(file), Files.size(file));
    } catch (NoSuchFileException e) {
      return new Stamp(FileTime.fromMillis(0), 0);
    }
  }

  @Override
  public void record(JarId jar, JarReport report, OffsetDateTime when, String by)
      throws IOException, Refused {
    ledger.append(
        pantry -> {
          Jar found = found(pantry, jar);
          check(found, report, when);
          List<Entry> entries = new ArrayList<>();
          report
              .happenings(found)
              .forEach(what -> entries.addAll(Entry.forJars(when, List.of(jar), what, by)));
          return entries;
        });
  }

  @Override
  public void record(JarId jar, Vouched vouched, OffsetDateTime when, String by)
      throws IOException, Refused {
    JarText text = new JarText(new VerdictText(Units.BOTH), rules, when);
    ledger.append(
        pantry -> {
          found(pantry, jar);
          VouchedLots.check(pantry.lot(jar.lot()).orElseThrow(), vouched, text);
          return List.of(Entry.of(when, jar.lot(), vouched, by));
        });
  }

  private static Jar found(Pantry pantry, JarId jar) throws Refused {
    return pantry
        .jar(jar)
        .orElseThrow(
            () ->
                new Refused(
                    Place.wholeFile(jar.toString()),
                    "the ledger has no such jar",
                    "read its label again"));
  }

  private void check(Jar jar, JarReport report, OffsetDateTime when) throws Refused {
    if (report instanceof JarStep step && step.deed() == Deed.TAKEN) {
      JarText text = new JarText(new VerdictText(Units.BOTH), rules, when);
      List<Problem> unfit = new Unfit(text, when).of(List.of(jar));
      if (!unfit.isEmpty()) {
        throw new Refused(unfit);
      }
    }
    Optional<String> hindrance = report.hindrance(jar, when);
    if (hindrance.isPresent()) {
      throw new Refused(
          Place.wholeFile(jar.id().toString()),
          "the jar " + hindrance.get(),
          "load the page again to see how it stands");
    }
  }
}
