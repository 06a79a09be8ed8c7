package jarwright.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The text of a table that is part of the program. */
final class OwnText {
  private OwnText() {}

  /**
   * Reads it as UTF-8.
   *
   * @param file path from the root of the program's own files
   * @throws IOException where the program's own file is damaged
   */
  static String of(String file) throws IOException {
    try (InputStream in = OwnText.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IOException("the program's own table " + file + " is missing from it");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
