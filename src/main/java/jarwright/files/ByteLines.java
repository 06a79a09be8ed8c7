package jarwright.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Parts a stream at its line feeds, and knows at which byte each line begins. */
final class ByteLines {
  private static final int BUFFER = 1 << 16;

  /** Beyond this a line is cut: nobody writes such an event. */
  private static final int LONGEST = 1 << 20;

  private final InputStream in;
  private final byte[] buffer = new byte[BUFFER];
  private int from;
  private int read;
  private byte[] line = new byte[1024];
  private int length;
  private int number;
  private long start;
  private long next;
  private boolean ended;

  ByteLines(InputStream in) {
    this.in = in;
  }

  /** Goes to the next line; false at the end of the stream. */
  boolean advance() throws IOException {
    length = 0;
    start = next;
    ended = false;
    while (!ended && fill()) {
      int end = from;
      while (end < read && buffer[end] != '\n') {
        end++;
      }
      keep(end);
      ended = end < read;
      next += end - from + (ended ? 1 : 0);
      from = end + (ended ? 1 : 0);
    }
    number++;
    return next > start;
  }

  private boolean fill() throws IOException {
    if (from == read) {
      from = 0;
      read = Math.max(0, in.read(buffer));
    }
    return read > 0;
  }

  private void keep(int end) {
    int kept = Math.min(end - from, LONGEST - length);
    if (length + kept > line.length) {
      line = Arrays.copyOf(line, Math.max(line.length * 2, length + kept));
    }
    System.arraycopy(buffer, from, line, length, kept);
    length += kept;
  }

  /** The line's bytes from 0 to {@link #length}; valid until the next advance. */
  byte[] bytes() {
    return line;
  }

  /** Without the line feed, or the carriage return and line feed, at its end. */
  int length() {
    return length > 0 && line[length - 1] == '\r' ? length - 1 : length;
  }

  String text() {
    return new String(line, 0, length(), StandardCharsets.UTF_8);
  }

  /** Counted from 1. */
  int number() {
    return number;
  }

  /** Where the line begins, in bytes. */
  long start() {
    return start;
  }

  /** Where the next line begins. */
  long end() {
    return next;
  }

  /** Whether the line has its line feed. */
  boolean isEnded() {
    return ended;
  }
}
