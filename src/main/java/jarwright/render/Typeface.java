package jarwright.render;

import com.lowagie.text.pdf.BaseFont;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;

/**
 * The house's typeface, named by {@code fonts/fonts.properties} in the jar. Each face is read on
 * first use and then kept for all documents of the run.
 */
final class Typeface {
  private final Map<String, Face> faces = new HashMap<>();
  private Properties names;

  Face regular() {
    return face("regular");
  }

  Face bold() {
    return face("bold");
  }

  /** The face of big figures. */
  Face figures() {
    return face(names().containsKey("figures") ? "figures" : "bold");
  }

  private Face face(String weight) {
    String file = names().getProperty(weight);
    if (file == null) {
      throw new IllegalStateException("fonts/fonts.properties names no file for " + weight);
    }
    return faces.computeIfAbsent(file, Typeface::read);
  }

  private Properties names() {
    if (names == null) {
      Properties read = new Properties();
      try (InputStream in = open("fonts.properties")) {
        read.load(in);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      names = read;
    }
    return names;
  }

  private static Face read(String file) {
    try (InputStream in = open(file)) {
      return new Face(
          BaseFont.createFont(
              file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, in.readAllBytes(), null));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream open(String file) throws IOException {
    InputStream in = Typeface.class.getClassLoader().getResourceAsStream("fonts/" + file);
    if (in == null) {
      throw new FileNotFoundException("the program lacks its font file fonts/" + file);
    }
    return in;
  }
}
