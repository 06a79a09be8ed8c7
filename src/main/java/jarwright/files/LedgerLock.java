package jarwright.files;

import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Keeps all others, in this program and in other ones, from writing to a household's ledger.
 *
 * <p>The lock is on a file of its own: POSIX drops a lock as soon as any reader of the locked file
 * closes it, and Windows would keep readers out.
 */
final class LedgerLock {
  static final String FILE = ".ledger.lock";

  private static final Map<Path, ReentrantLock> IN_THIS_PROGRAM = new ConcurrentHashMap<>();

  private LedgerLock() {}

  /** What is done while no one else writes. */
  interface Work<T> {
    T done() throws IOException, Refused;
  }

  /** Waits until no one else writes, then does the work. */
  static <T> T holding(Path folder, Work<T> work) throws IOException, Refused {
    ReentrantLock mine =
        IN_THIS_PROGRAM.computeIfAbsent(folder.toRealPath(), f -> new ReentrantLock());
    if (mine.isHeldByCurrentThread()) {
      throw new IllegalStateException("a ledger cannot be written to while deciding what to write");
    }
    mine.lock();
    try (FileChannel channel =
            FileChannel.open(
                folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = channel.lock()) {
      if (!lock.isValid()) {
        throw new IOException("the ledger could not be locked");
      }
      return work.done();
    } finally {
      mine.unlock();
    }
  }
}
