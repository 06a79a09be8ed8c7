package jarwright.files;

import jarwright.batch.BatchRecord;
import jarwright.lot.LotCode;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Which records have to be written; refuses to change what is frozen. */
final class RecordChanges {
  private final HouseholdFolder folder;
  private final Predicate<LotCode> frozen;
  private final Problems problems = new Problems();
  private final Map<String, byte[]> replaced = new LinkedHashMap<>();
  private final Map<String, byte[]> written = new LinkedHashMap<>();

  private RecordChanges(HouseholdFolder folder, Predicate<LotCode> frozen) {
    this.folder = folder;
    this.frozen = frozen;
  }

  /**
   * Compares records with what the folder has of them.
   *
   * @throws Refused where a frozen record would change
   */
  static RecordChanges of(
      HouseholdFolder folder, List<BatchRecord> records, Predicate<LotCode> frozen)
      throws IOException, Refused {
    RecordChanges changes = new RecordChanges(folder, frozen);
    changes.compare(records);
    return changes;
  }

  /** The files that will be replaced as they are, by name below the household folder. */
  Map<String, byte[]> replaced() {
    return replaced;
  }

  /** The files of new and changed records, by name below the household folder. */
  Map<String, byte[]> written() {
    return written;
  }

  private void compare(List<BatchRecord> records) throws IOException, Refused {
    for (BatchRecord record : records) {
      Path file = folder.file(record.lot());
      String text = RecordText.of(record);
      String before = Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : "";
      if (isAnothers(record)) {
        problems.add(
            Place.wholeFile(file.toString()),
            "lot " + record.lot() + " has meanwhile been given to another batch",
            "run the command again: the batch then gets the next free letter");
      } else if (!before.isEmpty() && !before.equals(text) && frozen.test(record.lot())) {
        tell(file, record.lot(), before, text);
      } else if (!before.equals(text)) {
        String name = HouseholdFolder.BATCHES + "/" + file.getFileName();
        written.put(name, text.getBytes(StandardCharsets.UTF_8));
        if (!before.isEmpty()) {
          replaced.put(name, before.getBytes(StandardCharsets.UTF_8));
        }
      }
    }
    problems.refuse();
  }

  /** Whether the lot's record is that of a batch in another place, or of another product. */
  private boolean isAnothers(BatchRecord record) throws IOException, Refused {
    return folder
        .record(record.lot())
        .filter(
            there ->
                !there.origin().equals(record.origin())
                    || !there.food().product().equals(record.food().product()))
        .isPresent();
  }

  private void tell(Path file, LotCode lot, String before, String after) {
    List<String> old = before.lines().toList();
    List<String> now = after.lines().toList();
    int line = 0;
    while (line < old.size() && line < now.size() && old.get(line).equals(now.get(line))) {
      line++;
    }
    String was = line < old.size() ? old.get(line) : "nothing more";
    String is = line < now.size() ? now.get(line) : "nothing more";
    problems.add(
        new Place(file.toString(), line + 1, 0, ""),
        "lot "
            + lot
            + " has been worked on, so its record as planned stays: it has \""
            + was
            + "\", and the plan now gives \""
            + is
            + "\"",
        "put the plan back as it was, or write the new batch into a plan of its own");
  }
}
