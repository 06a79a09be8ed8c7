package jarwright.files;

import static jarwright.pantry.InventedKitchen.NOON;
import static jarwright.pantry.InventedKitchen.PLUMS;

import jarwright.pantry.Entry;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.JarStep;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A program of its own that appends to a ledger and says what is safe on the disk. */
final class AppendingProgram {
  private AppendingProgram() {}

  /** Folder, its own name, and how many events to append. */
  public static void main(String[] args) throws Exception {
    LedgerFile ledger = LedgerFile.in(Path.of(args[0]));
    int events = Integer.parseInt(args[2]);
    for (int i = 1; i <= events; i++) {
      String word = args[1] + "-" + i;
      Entry entry = Entry.of(NOON, PLUMS, JarNumbers.of(1 + i % 7), JarStep.moved(word), args[1]);
      ledger.append(List.of(entry));
      System.out.println(word);
    }
  }

  static Process start(Path folder, String name, int events) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xshare:auto", "-XX:TieredStopAtLevel=1", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.add(AppendingProgram.class.getName());
    command.addAll(List.of(folder.toString(), name, String.valueOf(events)));
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }
}
