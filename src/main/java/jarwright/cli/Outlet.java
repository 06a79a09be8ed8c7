package jarwright.cli;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/**
 * Where output leaves the program. A print stream keeps silent about what it could not write, and
 * half a table in a file on a full disk looks like a whole one; this remembers.
 */
final class Outlet extends FilterOutputStream {
  private static final int BUFFER = 8_192;

  private Optional<IOException> fault = Optional.empty();

  Outlet(OutputStream out) {
    super(new BufferedOutputStream(out, BUFFER));
  }

  /** Why not all was written; whoever closes a pipe has seen enough, which is no fault. */
  Optional<String> fault() {
    return fault
        .map(e -> String.valueOf(e.getMessage()))
        .filter(why -> !why.toLowerCase(Locale.ROOT).contains("pipe"));
  }

  @Override
  public void write(int character) throws IOException {
    write(new byte[] {(byte) character}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    try {
      out.write(bytes, from, length);
    } catch (IOException e) {
      throw remembered(e);
    }
  }

  @Override
  public void flush() throws IOException {
    try {
      out.flush();
    } catch (IOException e) {
      throw remembered(e);
    }
  }

  private IOException remembered(IOException e) {
    fault = fault.or(() -> Optional.of(e));
    return e;
  }
}
