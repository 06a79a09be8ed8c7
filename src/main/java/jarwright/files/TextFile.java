package jarwright.files;

import jarwright.problem.Place;
import jarwright.problem.Refused;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A text file that a person wrote, read whole once it is known to be one. */
final class TextFile {
  /** More than this nobody writes by hand; no byte beyond it is read. */
  static final int MOST_BYTES = 1_000_000;

  private static final Pattern LINE_END = Pattern.compile("\r\n|[\r\n]");
  private static final String SAVE_AS_TEXT = "save it as plain text (YAML) or as CSV, in UTF-8";

  private final String name;
  private final String text;
  private final List<String> lines = new ArrayList<>();
  private final List<Integer> starts = new ArrayList<>();

  private TextFile(String name, String text) {
    this.name = name;
    this.text = text;
    Matcher end = LINE_END.matcher(text);
    int from = 0;
    while (end.find()) {
      addLine(from, end.start());
      from = end.end();
    }
    addLine(from, text.length());
  }

  private void addLine(int from, int to) {
    starts.add(from);
    lines.add(text.substring(from, to));
  }

  /** As the user gave it. */
  String name() {
    return name;
  }

  /** Without a byte order mark. */
  String text() {
    return text;
  }

  /** Without their ends. */
  List<String> lines() {
    return lines;
  }

  /**
   * Reads a file.
   *
   * @throws Refused where it is empty, too large, no text, or not UTF-8
   * @throws IOException where it cannot be read at all
   */
  static TextFile read(Path path) throws IOException, Refused {
    String name = path.toString();
    if (Files.isDirectory(path)) {
      throw new IOException(name + " is a folder, not a file");
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(path)) {
      bytes = in.readNBytes(MOST_BYTES + 1);
    }
    return of(name, bytes);
  }

  static TextFile of(String name, byte[] bytes) throws Refused {
    refuseOtherKinds(name, bytes);
    if (bytes.length > MOST_BYTES) {
      throw whole(name, "the file is larger than 1 MB", "part it into several");
    }
    String text = decode(name, bytes);
    if (text.isBlank()) {
      throw whole(name, "the file is empty", "write a plan in it, or the rows of a table");
    }
    TextFile file = new TextFile(name, text);
    file.refuseControlCharacters();
    return file;
  }

  private static void refuseOtherKinds(String name, byte[] bytes) throws Refused {
    if (startsWith(bytes, "%PDF")) {
      throw whole(name, "this is a PDF, not a plan", SAVE_AS_TEXT);
    }
    if (startsWith(bytes, "PK\u0003\u0004")) {
      throw whole(name, "this is a spreadsheet's own file or an archive", "save it as CSV first");
    }
    if (startsWith(bytes, "\u00FF\u00FE") || startsWith(bytes, "\u00FE\u00FF")) {
      throw whole(name, "the file is saved in UTF-16", "save it as CSV or text in UTF-8");
    }
    for (byte b : bytes) {
      if (b == 0) {
        throw whole(name, "this is no text file", SAVE_AS_TEXT);
      }
    }
  }

  private static boolean startsWith(byte[] bytes, String mark) {
    byte[] wanted = mark.getBytes(StandardCharsets.ISO_8859_1);
    for (int i = 0; i < wanted.length; i++) {
      if (i >= bytes.length || bytes[i] != wanted[i]) {
        return false;
      }
    }
    return true;
  }

  private static String decode(String name, byte[] bytes) throws Refused {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
      int column = text.length() - text.lastIndexOf('\n');
      throw new Refused(
          new Place(name, line, column, ""),
          "a character here is not in UTF-8",
          "save the file in UTF-8 (in a spreadsheet: CSV UTF-8)");
    }
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private void refuseControlCharacters() throws Refused {
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      for (int c = 0; c < line.length(); c++) {
        if (Character.isISOControl(line.charAt(c)) && line.charAt(c) != '\t') {
          throw new Refused(
              new Place(name, i + 1, c + 1, ""), "a control character stands here", SAVE_AS_TEXT);
        }
      }
    }
  }

  private static Refused whole(String name, String what, String remedy) {
    return new Refused(Place.wholeFile(name), what, remedy);
  }

  /** The place of a character of the text. */
  Place atIndex(int index) {
    int line = Collections.binarySearch(starts, index);
    int found = line >= 0 ? line : -line - 2;
    return at(found + 1, index - starts.get(found) + 1);
  }

  /** A place in it, line and column counted from 1. */
  Place at(int line, int column) {
    String shown = line >= 1 && line <= lines.size() ? lines.get(line - 1) : "";
    return new Place(name, line, column, shown);
  }
}
