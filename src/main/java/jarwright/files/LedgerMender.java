package jarwright.files;

import jarwright.problem.Refused;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

/** Cuts a torn last line off a ledger and keeps it in a file of its own. */
final class LedgerMender {
  private final Path folder;
  private final Path file;
  private final LedgerFile.Opener opener;

  LedgerMender(Path folder, Path file, LedgerFile.Opener opener) {
    this.folder = folder;
    this.file = file;
    this.opener = opener;
  }

  /** What the whole file holds; nothing is changed. */
  LedgerScan.Found scan() throws IOException, Refused {
    try (InputStream in = Files.newInputStream(file)) {
      return LedgerScan.scan(in, LedgerFile.NAME);
    } catch (NoSuchFileException e) {
      return LedgerScan.scan(InputStream.nullInputStream(), LedgerFile.NAME);
    }
  }

  boolean isWhole(LedgerScan.Found found) throws IOException {
    return found.goodEnd() == (Files.exists(file) ? Files.size(file) : 0);
  }

  /**
   * Sets a torn last line aside; only while the ledger is locked, since it may else be one that is
   * just being written. First the copy is on the disk, then the ledger is cut.
   *
   * @param remarks takes a sentence on what was done
   */
  LedgerScan.Found mend(List<String> remarks) throws IOException, Refused {
    LedgerScan.Found found = scan();
    if (isWhole(found)) {
      return found;
    }
    try (FileChannel ledger =
        opener.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
      ByteBuffer torn = ByteBuffer.allocate(Math.toIntExact(ledger.size() - found.goodEnd()));
      int read = 0;
      while (torn.hasRemaining() && read >= 0) {
        read = ledger.read(torn, found.goodEnd() + torn.position());
      }
      int bytes = torn.position();
      Path aside = setAside(torn.flip());
      ledger.truncate(found.goodEnd());
      ledger.force(true);
      remarks.add(
          "The last line of "
              + LedgerFile.NAME
              + " had been cut off. Its "
              + bytes
              + " bytes are set aside in "
              + aside.getFileName()
              + "; every event before it is kept.");
    }
    return found;
  }

  private Path setAside(ByteBuffer torn) throws IOException {
    int number = 1;
    while (Files.exists(aside(number))) {
      number++;
    }
    Path aside = aside(number);
    try (FileChannel out =
        opener.open(aside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      while (torn.hasRemaining()) {
        out.write(torn);
      }
      out.force(true);
    } catch (FileAlreadyExistsException e) {
      throw new IOException(aside.getFileName() + " is in the way", e);
    }
    return aside;
  }

  private Path aside(int number) {
    return folder.resolve("ledger.torn-" + number + ".txt");
  }
}
