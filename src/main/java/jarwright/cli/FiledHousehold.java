package jarwright.cli;

import jarwright.files.HouseholdFolder;
import jarwright.files.LedgerFile;
import jarwright.files.VerdictTable;
import jarwright.lot.JarId;
import jarwright.pantry.Deed;
import jarwright.pantry.Entry;
import jarwright.pantry.Jar;
import jarwright.pantry.JarStep;
import jarwright.pantry.VerdictRules;
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
  public void record(JarId jar, JarStep step, OffsetDateTime when, String by)
      throws IOException, Refused {
    ledger.append(
        pantry -> {
          Optional<Jar> found = pantry.jar(jar);
          check(jar, found, step, when);
          return Entry.forJars(when, List.of(jar), step, by);
        });
  }

  private void check(JarId id, Optional<Jar> jar, JarStep step, OffsetDateTime when)
      throws Refused {
    if (jar.isEmpty()) {
      throw new Refused(
          Place.wholeFile(id.toString()), "the ledger has no such jar", "read its label again");
    }
    if (step.deed() == Deed.TAKEN) {
      JarText text = new JarText(new VerdictText(Units.BOTH), rules, when);
      List<Problem> unfit = new Unfit(text, when, false).of(List.of(jar.get()));
      if (!unfit.isEmpty()) {
        throw new Refused(unfit);
      }
    }
    Optional<String> hindrance = step.hindrance(jar.get(), when);
    if (hindrance.isPresent()) {
      throw new Refused(
          Place.wholeFile(id.toString()),
          "the jar " + hindrance.get(),
          "load the page again to see how it stands");
    }
  }
}
