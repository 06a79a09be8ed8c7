package jarwright.benchmark;

import jarwright.files.LedgerFile;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;

/**
 * {@code FoldLedger write N DIR} makes a ledger of N events; {@code FoldLedger read N DIR} reads
 * it, checks every line and adds all events up to the stock.
 */
final class FoldLedger {
  private static final int AT_ONCE = 20_000;

  private FoldLedger() {}

  public static void main(String[] args) throws IOException, Refused {
    int events = Integer.parseInt(args[1]);
    LedgerFile ledger = LedgerFile.in(Files.createDirectories(Path.of(args[2])));
    if (args[0].equals("write")) {
      for (int from = 0; from < events; from += AT_ONCE) {
        int to = Math.min(events, from + AT_ONCE);
        ledger.append(IntStream.range(from, to).mapToObj(Stock::event).toList());
      }
      return;
    }
    long jars = ledger.read().pantry().here().count();
    if (jars != (long) Jars.lots(events) * Jars.PER_LOT) {
      throw new IllegalStateException("the ledger adds up to " + jars + " jars");
    }
  }
}
