package jarwright.files;

import jarwright.pantry.Foods;
import jarwright.problem.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;

/** The program's own tables as the stock asks them; read when first asked, which is seldom. */
public final class FoodTables {
  private FoodTables() {}

  private static final class Once {
    private static final Foods FOODS = read();

    private static Foods read() {
      try {
        ProcessTables tables = ProcessTables.ofProgram();
        return new Foods(tables.book(), SayingRows.search(tables));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      } catch (Refused e) {
        throw new IllegalStateException("the program's own tables are damaged", e);
      }
    }
  }

  /** What the program's tables know of foods. */
  public static Foods own() {
    return Once.FOODS;
  }
}
