package jarwright.render;

import jarwright.page.Wording;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/** The print-outs' words in the jar: {@code jarwright/words/<language>.properties} in UTF-8. */
public final class WordBundle {
  /** The languages there are, the first being the one used when none is asked for. */
  public static final List<String> LANGUAGES = List.of("en");

  private WordBundle() {}

  /**
   * The words of a language.
   *
   * @param language one of {@link #LANGUAGES}
   * @throws IllegalArgumentException naming the languages there are
   */
  public static Wording load(String language) {
    if (!LANGUAGES.contains(language)) {
      throw new IllegalArgumentException(
          "language \"" + language + "\"; there are " + String.join(", ", LANGUAGES));
    }
    Map<String, String> texts = new TreeMap<>();
    read("/jarwright/words/" + language + ".properties")
        .forEach((key, text) -> texts.put((String) key, (String) text));
    return Wording.of(Locale.forLanguageTag(language), texts);
  }

  private static Properties read(String file) {
    try (InputStream in = WordBundle.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new FileNotFoundException("the program lacks its words " + file);
      }
      Properties read = new Properties();
      read.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      return read;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
