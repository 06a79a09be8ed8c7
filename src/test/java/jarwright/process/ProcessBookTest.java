package jarwright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.quantity.Altitude;
import jarwright.quantity.Temperature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** A book gives back what was put into it. */
class ProcessBookTest {
  private static final SyrupRow LIGHT = Book.get().syrup(Syrup.LIGHT, JarSize.QUART);

  private static ProcessBook bookOf(String... ids) {
    List<Product> products = Arrays.stream(ids).map(Book::product).toList();
    List<TableRow> rows = new ArrayList<>();
    List<Formula> formulas = new ArrayList<>();
    for (String id : ids) {
      rows.addAll(Book.get().rows(id));
      formulas.addAll(Book.get().formulas(id));
    }
    return new ProcessBook(products, rows, formulas, List.of(LIGHT));
  }

  @Test
  void eachBandIsEqualToItsLikeAlone() {
    List<AltitudeBand> bands = Book.get().rows().stream().map(TableRow::band).distinct().toList();
    for (AltitudeBand band : bands) {
      AltitudeBand like = new AltitudeBand(band.fromFeet(), band.toFeet());
      assertEquals(List.of(like), bands.stream().filter(like::equals).toList());
      assertEquals(
          List.of(like), bands.stream().filter(b -> b.hashCode() == like.hashCode()).toList());
    }
  }

  @Test
  void whatIsPutInIsInIt() {
    ProcessBook book = bookOf("figs", "apple-pie-filling");
    assertEquals(
        List.of("figs", "apple-pie-filling"), book.products().stream().map(Product::id).toList());
    assertEquals(Optional.of(Book.product("figs")), book.product("figs"));
    assertEquals(Optional.empty(), book.product("tuna"));
    assertEquals(Book.get().rows("figs"), book.rows("figs"));
    assertTrue(!book.rows("figs").isEmpty() && book.rows("tuna").isEmpty());
    assertEquals(
        Book.get().rows("figs").size() + Book.get().rows("apple-pie-filling").size(),
        book.rows().size());
    assertEquals(2, book.formulas("apple-pie-filling").size());
    assertEquals(Book.get().formulas("apple-pie-filling"), book.formulas("apple-pie-filling"));
    assertEquals(List.of(), book.formulas("figs"));
    assertEquals(LIGHT, book.syrup(Syrup.LIGHT, JarSize.HALF_GALLON));
    assertThrows(IllegalArgumentException.class, () -> book.syrup(Syrup.HEAVY, JarSize.QUART));
  }

  /** AIB 539 (2015) Guide 1, p. 1-22. */
  @Test
  void aSizeThatIsListedServesItself() {
    Product figs = Book.product("figs");
    assertEquals(JarSize.PINT, Book.get().printedFor(figs, JarSize.HALF_PINT));
    assertEquals(JarSize.PINT, Book.get().printedFor(figs, JarSize.PINT));
    assertEquals(JarSize.QUART, Book.get().printedFor(figs, JarSize.ONE_AND_A_HALF_PINT));
    assertEquals(JarSize.HALF_GALLON, Book.get().printedFor(figs, JarSize.HALF_GALLON));
    assertEquals(
        JarSize.HALF_PINT, Book.get().printedFor(Book.product("clams"), JarSize.HALF_PINT));
  }

  /** A size that is closed in words is closed for the size that it serves, too. */
  @Test
  void aClosedSizeServesNoOther() {
    Product figs = Book.product("figs");
    TableRow closed =
        new TableRow(
            "figs",
            Method.BOILING_WATER,
            Pack.HOT,
            JarSize.PINT,
            new AltitudeBand(0, OptionalInt.empty()),
            Optional.empty(),
            new Source("invented"),
            "");
    ProcessBook book = new ProcessBook(List.of(figs), List.of(closed), List.of(), List.of());
    Setting asked =
        new Setting(figs, Method.BOILING_WATER, Pack.HOT, JarSize.HALF_PINT, Altitude.feet(0));
    assertEquals(new Answer.NotRecommended(closed, List.of()), book.lookUp(asked));
  }

  @Test
  void gelPointsRise() {
    Source source = new Source("AIB 539 (2015) Guide 7");
    GelPoints.Row low = new GelPoints.Row(Altitude.feet(0), Temperature.fahrenheit(220), source);
    GelPoints.Row same = new GelPoints.Row(Altitude.feet(0), Temperature.fahrenheit(219), source);
    List<GelPoints.Row> twice = List.of(low, same);
    assertThrows(IllegalArgumentException.class, () -> new GelPoints(twice));
  }
}
