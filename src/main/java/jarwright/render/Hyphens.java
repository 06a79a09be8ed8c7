package jarwright.render;

import com.lowagie.text.pdf.hyphenation.Hyphenation;
import com.lowagie.text.pdf.hyphenation.HyphenationTree;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;

/** Where a word of one language may be divided; patterns are read when a word first needs it. */
final class Hyphens {
  private static final int[] NOWHERE = {};
  private static final int LEAST_BEFORE = 3;
  private static final int LEAST_AFTER = 3;

  private final Locale locale;
  private Optional<HyphenationTree> tree;

  Hyphens(Locale locale) {
    this.locale = locale;
  }

  Locale locale() {
    return locale;
  }

  /** The points inside {@code word} before which it may be divided, ascending. */
  int[] points(String word) {
    if (word.length() < LEAST_BEFORE + LEAST_AFTER) {
      return NOWHERE;
    }
    if (tree == null) {
      tree = read();
    }
    if (tree.isEmpty()) {
      return NOWHERE;
    }
    Hyphenation found = tree.get().hyphenate(word, LEAST_BEFORE, LEAST_AFTER);
    return found == null ? NOWHERE : found.getHyphenationPoints();
  }

  private Optional<HyphenationTree> read() {
    String name = "hyphens-" + locale.getLanguage() + ".xml";
    try (InputStream in = Hyphens.class.getResourceAsStream(name)) {
      if (in == null) {
        return Optional.empty();
      }
      HyphenationTree read = new HyphenationTree();
      read.loadSimplePatterns(in);
      return Optional.of(read);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
