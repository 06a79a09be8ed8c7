package jarwright.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Reads no more of a ledger than is needed to add to it, however long it is. */
final class LedgerTail {
  private static final int WINDOW = 1 << 16;

  private LedgerTail() {}

  /**
   * The ledger's end as {@link LedgerScan} would find it, where the last line follows from the one
   * before it and is of the same household as the first; empty where only a whole scan can tell.
   */
  static Optional<LedgerScan.Found> of(FileChannel ledger) throws IOException {
    long size = ledger.size();
    String start = text(ledger, 0, (int) Math.min(size, WINDOW));
    long from = Math.max(0, size - WINDOW);
    String end = text(ledger, from, (int) (size - from));
    List<String> first = start.lines().limit(2).toList();
    List<String> lines = end.lines().filter(l -> !l.isEmpty()).toList();
    boolean whole = end.endsWith("\n") && first.size() == 2;
    // In a window that begins amid the file, its first line may be a part of one.
    if (!whole || lines.size() < (from == 0 ? 2 : 3)) {
      return Optional.empty();
    }
    String last = lines.get(lines.size() - 1);
    String before = lines.get(lines.size() - 2);
    return check(first.get(1)).flatMap(mark -> found(LedgerChain.mark(mark), before, last, size));
  }

  private static Optional<LedgerScan.Found> found(
      String mark, String before, String last, long size) {
    boolean isFirst = before.endsWith(LedgerText.HEADER);
    Optional<String> earlier = isFirst ? Optional.of(LedgerText.HEADER) : check(before);
    Optional<String> stated = check(last);
    if (earlier.isEmpty() || stated.isEmpty()) {
      return Optional.empty();
    }
    byte[] text =
        last.substring(0, last.length() - LedgerChain.LENGTH).getBytes(StandardCharsets.ISO_8859_1);
    String right = new LedgerChain().check(mark, earlier.get(), text, text.length);
    int comma = last.indexOf(',');
    if (!right.equals(stated.get()) || comma < 1) {
      return Optional.empty();
    }
    long number = Long.parseLong(last.substring(0, comma));
    return Optional.of(new LedgerScan.Found(mark, number, right, size, true, List.of()));
  }

  private static Optional<String> check(String line) {
    String end = line.substring(Math.max(0, line.length() - LedgerChain.LENGTH));
    return LedgerChain.looksLikeCheck(end) ? Optional.of(end) : Optional.empty();
  }

  /** One character for each byte, so that a check is over what stands in the file. */
  private static String text(FileChannel ledger, long from, int length) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(length);
    while (bytes.hasRemaining()) {
      if (ledger.read(bytes, from + bytes.position()) < 0) {
        break;
      }
    }
    return new String(bytes.array(), 0, bytes.position(), StandardCharsets.ISO_8859_1);
  }
}
