package jarwright.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;

/**
 * Keeps all others, in this program and in other ones, from giving out lots until it is closed. It
 * may be held while the ledger is locked, never the other way round.
 */
final class RegisterLock implements AutoCloseable {
  static final String FILE = ".batches.lock";

  private static final Map<Path, Semaphore> IN_THIS_PROGRAM = new ConcurrentHashMap<>();

  private final Semaphore mine;
  private final FileChannel channel;
  private final FileLock lock;

  private RegisterLock(Semaphore mine, FileChannel channel, FileLock lock) {
    this.mine = mine;
    this.channel = channel;
    this.lock = lock;
  }

  /** Waits until no one else holds it. */
  static RegisterLock on(Path folder) throws IOException {
    Semaphore mine = IN_THIS_PROGRAM.computeIfAbsent(folder.toRealPath(), f -> new Semaphore(1));
    mine.acquireUninterruptibly();
    FileChannel channel = null;
    try {
      channel =
          FileChannel.open(
              folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      return new RegisterLock(mine, channel, channel.lock());
    } catch (IOException e) {
      if (channel != null) {
        channel.close();
      }
      mine.release();
      throw e;
    }
  }

  @Override
  public void close() throws IOException {
    try (channel) {
      lock.release();
    } finally {
      mine.release();
    }
  }
}
