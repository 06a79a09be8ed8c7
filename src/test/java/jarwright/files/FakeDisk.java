package jarwright.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.OpenOption;
import java.nio.file.Path;

/**
 * A disk that is full after so many bytes, or fails in other ways; it never waits for a platter.
 */
final class FakeDisk implements LedgerFile.Opener {
  private long room;
  private final boolean forces;
  private final boolean truncates;

  private FakeDisk(long room, boolean forces, boolean truncates) {
    this.room = room;
    this.forces = forces;
    this.truncates = truncates;
  }

  static FakeDisk sound() {
    return new FakeDisk(Long.MAX_VALUE, true, true);
  }

  /** So many bytes can still be written. */
  static FakeDisk fullAfter(long bytes) {
    return new FakeDisk(bytes, true, true);
  }

  /** As above, and what was written cannot be taken back: the program is gone. */
  static FakeDisk goneAfter(long bytes) {
    return new FakeDisk(bytes, true, false);
  }

  /** Takes all bytes but cannot say that they are safe. */
  static FakeDisk unsure() {
    return new FakeDisk(Long.MAX_VALUE, false, true);
  }

  @Override
  public FileChannel open(Path file, OpenOption... options) throws IOException {
    return new Channel(FileChannel.open(file, options));
  }

  private final class Channel extends FileChannel {
    private final FileChannel real;

    private Channel(FileChannel real) {
      this.real = real;
    }

    private int write(ByteBuffer bytes, long position, boolean atPosition) throws IOException {
      if (room == 0) {
        throw new IOException("No space left on device");
      }
      ByteBuffer part = bytes.duplicate();
      // A write may take less than it was given, as POSIX allows.
      part.limit(bytes.position() + (int) Math.min(Math.min(room, 50), bytes.remaining()));
      int written = atPosition ? real.write(part, position) : real.write(part);
      bytes.position(bytes.position() + written);
      room -= written;
      return written;
    }

    @Override
    public int write(ByteBuffer bytes) throws IOException {
      return write(bytes, 0, false);
    }

    @Override
    public int write(ByteBuffer bytes, long position) throws IOException {
      return write(bytes, position, true);
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
      if (!truncates) {
        throw new IOException("Input/output error");
      }
      real.truncate(size);
      return this;
    }

    @Override
    public void force(boolean metaData) throws IOException {
      if (!forces) {
        throw new IOException("Input/output error");
      }
    }

    @Override
    public int read(ByteBuffer bytes) throws IOException {
      return real.read(bytes);
    }

    @Override
    public int read(ByteBuffer bytes, long position) throws IOException {
      return real.read(bytes, position);
    }

    @Override
    public long size() throws IOException {
      return real.size();
    }

    @Override
    public long position() throws IOException {
      return real.position();
    }

    @Override
    public FileChannel position(long position) throws IOException {
      real.position(position);
      return this;
    }

    @Override
    protected void implCloseChannel() throws IOException {
      real.close();
    }

    @Override
    public long read(ByteBuffer[] bytes, int offset, int length) {
      throw new UnsupportedOperationException();
    }

    @Override
    public long write(ByteBuffer[] bytes, int offset, int length) {
      throw new UnsupportedOperationException();
    }

    @Override
    public long transferTo(long position, long count, WritableByteChannel target) {
      throw new UnsupportedOperationException();
    }

    @Override
    public long transferFrom(ReadableByteChannel source, long position, long count) {
      throw new UnsupportedOperationException();
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long position, long size) {
      throw new UnsupportedOperationException();
    }

    @Override
    public FileLock lock(long position, long size, boolean shared) {
      throw new UnsupportedOperationException();
    }

    @Override
    public FileLock tryLock(long position, long size, boolean shared) {
      throw new UnsupportedOperationException();
    }
  }
}
