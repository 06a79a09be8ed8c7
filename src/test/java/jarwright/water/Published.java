package jarwright.water;

import jarwright.day.DayBook;
import jarwright.files.DayTables;
import jarwright.problem.Refused;
import java.io.IOException;

/** The program's own figures, read once. */
final class Published {
  static final DayBook BOOK;

  static {
    try {
      BOOK = DayTables.read();
    } catch (IOException | Refused e) {
      throw new AssertionError(e);
    }
  }

  private Published() {}
}
