package jarwright.files;

import jarwright.batch.BatchRecord;
import jarwright.lot.LotCode;
import jarwright.plan.BatchPlan;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The household's folder: its kitchen and its batch records. The ledger has a class of its own. */
public final class HouseholdFolder {
  static final String KITCHEN = "kitchen.yaml";
  static final String BATCHES = "batches";
  private static final String ENDING = ".yaml";

  private final Path folder;

  public HouseholdFolder(Path folder) {
    this.folder = folder;
  }

  /** The household's kitchen, where it has described one. */
  public Optional<Path> kitchenFile() {
    return Optional.of(folder.resolve(KITCHEN)).filter(Files::exists);
  }

  /** Every lot that has a record, by day and letter. Files of other names are not looked at. */
  public Collection<LotCode> lots() throws IOException {
    Path batches = folder.resolve(BATCHES);
    TreeSet<LotCode> lots = new TreeSet<>();
    if (!Files.isDirectory(batches)) {
      return lots;
    }
    try (Stream<Path> files = Files.list(batches)) {
      files.forEach(file -> lot(file).ifPresent(lots::add));
    }
    return lots;
  }

  private static Optional<LotCode> lot(Path file) {
    String name = String.valueOf(file.getFileName());
    if (!name.endsWith(ENDING)) {
      return Optional.empty();
    }
    try {
      String code = name.substring(0, name.length() - ENDING.length());
      return Optional.of(LotCode.parse(code)).filter(lot -> lot.toString().equals(code));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /**
   * The record of a lot, where there is one.
   *
   * @throws Refused where the file is not as the program wrote it
   */
  public Optional<BatchRecord> record(LotCode lot) throws IOException, Refused {
    try {
      return Optional.of(RecordReader.read(TextFile.read(file(lot)), lot));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  Path file(LotCode lot) {
    return folder.resolve(BATCHES).resolve(lot + ENDING);
  }

  /** The records of all lots packed on the days of the given batches. */
  public List<BatchRecord> recordsOfDays(List<BatchPlan> plans) throws IOException, Refused {
    List<BatchRecord> records = new ArrayList<>();
    for (LotCode lot : lots()) {
      if (plans.stream().anyMatch(p -> p.date().equals(lot.packed()))) {
        record(lot).ifPresent(records::add);
      }
    }
    return records;
  }

  /**
   * The lots that batches have, or would get if they were registered now. Writes nothing.
   *
   * @param taken lots that the ledger knows, whether or not they have a record
   * @throws Refused where a day has no letter left
   */
  public Map<BatchPlan, LotCode> lotsOf(List<BatchPlan> plans, Predicate<LotCode> taken)
      throws IOException, Refused {
    return new LotNaming(recordsOfDays(plans), taken).name(plans);
  }

  /**
   * Begins to register batches: until it is closed, no other run of the program can. Makes the
   * folder where there is none.
   *
   * @throws IOException where the folder cannot be written to
   */
  public Registration register() throws IOException {
    try {
      Files.createDirectories(folder);
      return new Registration(RegisterLock.on(folder));
    } catch (IOException e) {
      throw new IOException(folder + " cannot be written to: " + IoWords.of(e), e);
    }
  }

  /** What is done once the records are in their places. */
  public interface Recording {
    void run() throws IOException, Refused;
  }

  /** The right to give out lots and to write their records. */
  public final class Registration implements AutoCloseable {
    private final RegisterLock lock;

    private Registration(RegisterLock lock) {
      this.lock = lock;
    }

    /**
     * The lots of batches: those they have already, else that day's next free letters.
     *
     * @param taken lots that the ledger knows, whether or not they have a record
     * @throws Refused where a day has no letter left
     */
    public Map<BatchPlan, LotCode> lotsOf(List<BatchPlan> plans, Predicate<LotCode> taken)
        throws IOException, Refused {
      return HouseholdFolder.this.lotsOf(plans, taken);
    }

    /**
     * Writes the records that are new or changed, all or none. They come before what the ledger
     * says of them: where a run is stopped in between, the next one takes them up.
     *
     * @param frozen whether something has been recorded for a lot, after which its record stays
     * @param recording what is done with the records in their places; where it fails they are taken
     *     away again
     * @throws Refused where a frozen record would change
     */
    public void write(List<BatchRecord> records, Predicate<LotCode> frozen, Recording recording)
        throws IOException, Refused {
      RecordChanges changes = RecordChanges.of(HouseholdFolder.this, records, frozen);
      OutputFolder out = new OutputFolder(folder);
      try (OutputFolder.Staged before = out.stage(changes.replaced());
          OutputFolder.Staged after = out.stage(changes.written())) {
        boolean done = false;
        try {
          after.putInPlace();
          recording.run();
          done = true;
        } finally {
          if (!done) {
            after.takeBack(before);
          }
        }
      }
    }

    @Override
    public void close() throws IOException {
      lock.close();
    }
  }
}
