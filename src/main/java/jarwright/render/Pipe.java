package jarwright.render;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.CharBuffer;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;

/**
 * Carries text from the thread that writes it to the one that reads it, a few pieces ahead, so that
 * both work at once and the whole text is never in memory.
 */
final class Pipe extends Reader {
  private static final int PIECE = 8_192;
  private static final int PIECES_AHEAD = 8;

  private final Watcher watcher;
  private final BlockingQueue<CharBuffer> pieces = new ArrayBlockingQueue<>(PIECES_AHEAD);
  private CharBuffer current = CharBuffer.allocate(0);
  private boolean ended;

  /** The fault that ended the writing, if it was one; seen by the reader after the last piece. */
  private volatile Throwable fault;

  /** A pipe whose text {@code watcher} sees, piece by piece, in the thread that writes it. */
  Pipe(Watcher watcher) {
    this.watcher = watcher;
  }

  /** Sees a piece of the text. */
  interface Watcher {
    void see(char[] text, int from, int length);
  }

  /** An empty piece ends the text. */
  private static CharBuffer end() {
    return CharBuffer.allocate(0);
  }

  /** Runs the writing to its end; whatever it throws is thrown again where the text is read. */
  void fill(Filling filling) {
    try {
      Inlet inlet = new Inlet();
      try {
        filling.into(inlet);
      } catch (RuntimeException | Error e) {
        fault = e;
      }
      inlet.flush();
      pieces.put(end());
    } catch (InterruptedException | InterruptedIOException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** What writes the text. */
  interface Filling {
    void into(Writer out);
  }

  @Override
  public int read(char[] to, int from, int length) throws InterruptedIOException {
    while (!ended && !current.hasRemaining()) {
      try {
        current = pieces.take();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new InterruptedIOException();
      }
      ended = !current.hasRemaining();
    }
    if (ended) {
      if (fault instanceof Error error) {
        throw error;
      }
      if (fault != null) {
        throw (RuntimeException) fault;
      }
      return -1;
    }
    int n = Math.min(length, current.remaining());
    current.get(to, from, n);
    return n;
  }

  @Override
  public void close() {}

  /** Where the text goes in. */
  private final class Inlet extends Writer {
    private char[] piece = new char[PIECE];
    private int filled;

    @Override
    public void write(char[] chars, int from, int length) throws IOException {
      for (int done = 0; done < length; ) {
        int n = Math.min(length - done, PIECE - filled);
        System.arraycopy(chars, from + done, piece, filled, n);
        advance(n);
        done += n;
      }
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
      for (int done = 0; done < length; ) {
        int n = Math.min(length - done, PIECE - filled);
        text.getChars(from + done, from + done + n, piece, filled);
        advance(n);
        done += n;
      }
    }

    private void advance(int n) throws InterruptedIOException {
      filled += n;
      if (filled == PIECE) {
        flush();
      }
    }

    @Override
    public void flush() throws InterruptedIOException {
      if (filled > 0) {
        watcher.see(piece, 0, filled);
        try {
          pieces.put(CharBuffer.wrap(piece, 0, filled));
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
          throw new InterruptedIOException();
        }
        piece = new char[PIECE];
        filled = 0;
      }
    }

    @Override
    public void close() {}
  }
}
