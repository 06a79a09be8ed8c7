package jarwright.water;

import jarwright.process.JarSize;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The dimensions of jars: published ranges, and the household's own measures in their place. */
public final class JarBook {
  private final Map<JarSize, JarDimensions> jars = new EnumMap<>(JarSize.class);

  /** Takes one entry a size; a size without an entry has no known dimensions. */
  public JarBook(List<JarDimensions> jars) {
    for (JarDimensions one : jars) {
      if (this.jars.put(one.jar(), one) != null) {
        throw new IllegalArgumentException("two entries for " + one.jar());
      }
    }
  }

  public Optional<JarDimensions> of(JarSize jar) {
    return Optional.ofNullable(jars.get(jar));
  }

  /** The same book with a jar that the household has measured. */
  public JarBook with(JarDimensions measured) {
    JarBook book = new JarBook(List.copyOf(jars.values()));
    book.jars.put(measured.jar(), measured);
    return book;
  }
}
