package jarwright.render;

import jarwright.page.Language;
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

/**
 * The print-outs' words in the jar: {@code jarwright/words/<part>_<language>.properties} in UTF-8,
 * a part for each print-out and one for what they share.
 */
public final class WordBundle {
  /** The languages there are, the first being the one used when none is asked for. */
  public static final List<String> LANGUAGES = Language.tags();

  private static final List<String> PARTS =
      List.of("common", "checklist", "label", "shelf", "day", "record", "says", "web", "process");

  private WordBundle() {}

  /**
   * The words of a language.
   *
   * @param language one of {@link #LANGUAGES}
   * @throws IllegalArgumentException naming the languages there are, or a key that is worded twice
   */
  public static Wording load(String language) {
    if (!LANGUAGES.contains(language)) {
      throw new IllegalArgumentException(
          "language \"" + language + "\"; there are " + String.join(", ", LANGUAGES));
    }
    Map<String, String> texts = new TreeMap<>();
    for (String part : PARTS) {
      String file = "/jarwright/words/" + part + "_" + language + ".properties";
      for (Map.Entry<Object, Object> entry : read(file).entrySet()) {
        if (texts.put((String) entry.getKey(), (String) entry.getValue()) != null) {
          throw new IllegalArgumentException(file + ": " + entry.getKey() + " is worded twice");
        }
      }
    }
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
