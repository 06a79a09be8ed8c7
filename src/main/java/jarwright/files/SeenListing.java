package jarwright.files;

import jarwright.lot.JarId;
import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Jars that were seen somewhere, a row each: a stock-take reads it as it is. */
public final class SeenListing {
  private static final List<String> COLUMNS = List.of("jar", "shelf");

  private SeenListing() {}

  /**
   * A table with a header line.
   *
   * @param shelf where they were seen; empty where that is not said
   */
  public static String csv(Collection<JarId> jars, String shelf) throws IOException {
    return listing(jars, shelf).csv(Cell::out);
  }

  /** A list of objects with the same names; what is empty is left out. */
  public static String json(Collection<JarId> jars, String shelf) throws IOException {
    return listing(jars, shelf).json();
  }

  private static Listing listing(Collection<JarId> jars, String shelf) {
    List<List<String>> rows =
        new TreeSet<>(jars).stream().map(j -> List.of(j.toString(), shelf)).toList();
    return new Listing(COLUMNS, Set.of(), rows);
  }
}
