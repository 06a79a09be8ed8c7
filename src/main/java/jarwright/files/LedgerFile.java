package jarwright.files;

import jarwright.pantry.Entry;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Pantry;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The household's {@code ledger.csv}. Lines are only ever added, and what {@code append} returns is
 * on the disk. A last line that was cut off is set aside in {@code ledger.torn-1.txt} and so on.
 *
 * <p>Appending reads the ledger's first and last lines only: its cost does not grow with the
 * ledger.
 */
public final class LedgerFile {
  public static final String NAME = "ledger.csv";

  private final Path folder;
  private final Path file;
  private final Opener opener;
  private final LedgerMender mender;

  /** Opens channels; tests give one whose disk fails. */
  interface Opener {
    FileChannel open(Path file, OpenOption... options) throws IOException;
  }

  /** Decides what to write from what the ledger holds, while nobody else can write. */
  public interface Decision {
    List<Entry> entries(Pantry pantry) throws Refused;
  }

  /** The same, from the single events. */
  public interface Correction {
    List<Entry> entries(List<LedgerEvent> events) throws Refused;
  }

  LedgerFile(Path folder, Opener opener) {
    this.folder = folder;
    this.file = folder.resolve(NAME);
    this.opener = opener;
    this.mender = new LedgerMender(folder, file, opener);
  }

  /** The ledger of a household folder, which must exist before anything is appended. */
  public static LedgerFile in(Path folder) {
    return new LedgerFile(folder, FileChannel::open);
  }

  /**
   * Reads and checks the whole ledger; one that does not exist yet is empty.
   *
   * @throws Refused where it is no ledger, was changed, or was mixed with another
   * @throws IOException where it cannot be read; the message says why in plain words
   */
  public Ledger read() throws IOException, Refused {
    try {
      LedgerScan.Found found = mender.scan();
      return mender.isWhole(found) ? new Ledger(file, found, List.of()) : mended();
    } catch (IOException e) {
      throw new IOException(file + " could not be read: " + IoWords.of(e), e);
    }
  }

  /** Another program may just be writing: looks again when it is done. */
  private Ledger mended() throws IOException, Refused {
    List<String> remarks = new ArrayList<>();
    try {
      LedgerScan.Found found = LedgerLock.holding(folder, () -> mender.mend(remarks));
      return new Ledger(file, found, remarks);
    } catch (IOException e) {
      String left = "The last line of " + NAME + " is cut off and was left out; ";
      String why = "it could not be set aside (" + IoWords.of(e) + ").";
      return new Ledger(file, mender.scan(), List.of(left + why));
    }
  }

  /**
   * Adds a line for each entry, or none at all.
   *
   * @throws Refused where the ledger's end was changed or mixed with another
   * @throws IOException where nothing was recorded; the message says why in plain words
   */
  public Appended append(List<Entry> entries) throws IOException, Refused {
    return locked(
        () -> {
          List<String> remarks = new ArrayList<>();
          return new Appended(write(entries, remarks), remarks);
        });
  }

  /**
   * Reads the whole ledger, lets the decision see it, and adds what it gives, all before another
   * program can write.
   *
   * @throws Refused where the ledger cannot be read or the decision refuses
   * @throws IOException where nothing was recorded; the message says why in plain words
   */
  public Appended append(Decision decision) throws IOException, Refused {
    return decided(ledger -> decision.entries(ledger.pantry()));
  }

  /**
   * The same for what hangs on single events of the ledger, such as taking one back.
   *
   * @throws Refused where the ledger cannot be read or the correction refuses
   * @throws IOException where nothing was recorded; the message says why in plain words
   */
  public Appended correct(Correction correction) throws IOException, Refused {
    return decided(ledger -> correction.entries(ledger.events()));
  }

  private interface Sight {
    List<Entry> entries(Ledger ledger) throws IOException, Refused;
  }

  private Appended decided(Sight sight) throws IOException, Refused {
    return locked(
        () -> {
          List<String> remarks = new ArrayList<>();
          Ledger ledger = new Ledger(file, mender.mend(remarks), remarks);
          return new Appended(write(sight.entries(ledger), remarks), remarks);
        });
  }

  private <T> T locked(LedgerLock.Work<T> work) throws IOException, Refused {
    try {
      return LedgerLock.holding(folder, work);
    } catch (IOException e) {
      throw new IOException(
          file + " could not be written: " + IoWords.of(e) + ". Nothing was recorded", e);
    }
  }

  private List<LedgerEvent> write(List<Entry> entries, List<String> remarks)
      throws IOException, Refused {
    if (entries.isEmpty()) {
      return List.of();
    }
    boolean isNew = !Files.exists(file);
    List<LedgerEvent> events;
    try (FileChannel ledger =
        opener.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
      Optional<LedgerScan.Found> tail = LedgerTail.of(ledger);
      LedgerWriter writer = new LedgerWriter(tail.isPresent() ? tail.get() : mender.mend(remarks));
      events = writer.compose(entries);
      writer.write(ledger);
    }
    if (isNew) {
      forceFolder();
    }
    return events;
  }

  /**
   * Makes sure that a new file is found after a power cut; some systems cannot do it for folders.
   */
  private void forceFolder() {
    try (FileChannel directory = FileChannel.open(folder, StandardOpenOption.READ)) {
      directory.force(true);
    } catch (IOException e) {
      return;
    }
  }
}
