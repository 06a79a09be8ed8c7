package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.batch.JarRange;
import jarwright.batch.ProducePerJar;
import jarwright.problem.Problems;
import jarwright.process.Book;
import jarwright.process.JarSize;
import jarwright.process.ProduceNeed;
import jarwright.process.Product;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The guide's "Quantity" paragraphs, typed again from the publications that each row names, and
 * what they mean for a shopping list and for produce at hand. Rows that were typed from memory say
 * so.
 */
class QuantitiesTest {
  private static final String FILE = "quantities.csv";
  private static final List<String> COLUMNS =
      List.of(
          "product_id",
          "lb_per_7_quarts",
          "lb_per_9_pints",
          "container_lb",
          "qt_min",
          "qt_max",
          "lb_per_quart",
          "publication",
          "seen");

  record Quantity(
      String product,
      Optional<Fraction> quarts,
      Optional<Fraction> pints,
      Optional<ProduceNeed.Container> container,
      Optional<Fraction> average,
      boolean seen) {
    @Override
    public String toString() {
      return product;
    }
  }

  static List<Quantity> rows() throws Exception {
    Problems faults = new Problems();
    List<Quantity> rows =
        new TableText(FILE, OwnText.of("/jarwright/" + FILE), COLUMNS, faults)
            .read(QuantitiesTest::quantity);
    faults.refuse();
    return rows;
  }

  private static Quantity quantity(TableText.Row row) {
    assertTrue(!row.get("publication").isBlank(), row.text());
    return new Quantity(
        row.get("product_id"),
        figure(row.get("lb_per_7_quarts")),
        figure(row.get("lb_per_9_pints")),
        figure(row.get("container_lb"))
            .map(
                lb ->
                    new ProduceNeed.Container(
                        lb, Fraction.parse(row.get("qt_min")), Fraction.parse(row.get("qt_max")))),
        figure(row.get("lb_per_quart")),
        row.get("seen").equals("yes"));
  }

  private static Optional<Fraction> figure(String cell) {
    return Optional.of(cell).filter(c -> !c.isEmpty()).map(Fraction::parse);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theTablesHaveTheSameFigures(Quantity quantity) {
    ProduceNeed need = Book.product(quantity.product()).produce();
    assertEquals(quantity.quarts(), need.perSevenQuarts());
    assertEquals(quantity.pints(), need.perNinePints());
    assertEquals(quantity.container(), need.container());
    assertEquals(quantity.average(), need.perQuart());
  }

  @Test
  void noProductWithAWeightIsLeftOutAndMostWereLookedUp() throws Exception {
    assertEquals(
        Book.get().products().stream()
            .filter(p -> p.produce().isPrinted())
            .map(Product::id)
            .sorted()
            .toList(),
        rows().stream().map(Quantity::product).sorted().toList());
    assertTrue(rows().stream().filter(Quantity::seen).count() >= 27);
  }

  /** A canner load is bought as printed, and a bushel fills as many quarts as printed. */
  @ParameterizedTest
  @MethodSource("rows")
  void theyMeanWhatTheGuideSays(Quantity quantity) {
    ProduceNeed need = Book.product(quantity.product()).produce();
    ProducePerJar quart = ProducePerJar.of(need, JarSize.QUART).orElseThrow();
    quantity
        .quarts()
        .ifPresent(lb -> assertEquals(lb, quart.forJars(7).about().inPounds(), "seven quarts"));
    quantity
        .pints()
        .ifPresent(
            lb ->
                assertEquals(
                    lb,
                    ProducePerJar.of(need, JarSize.PINT)
                        .orElseThrow()
                        .forJars(9)
                        .about()
                        .inPounds(),
                    "nine pints"));
    quantity
        .container()
        .ifPresent(
            container -> {
              JarRange jars = quart.fromProduce(Mass.pounds(container.pounds()));
              assertEquals(container.fewestQuarts(), Fraction.of(jars.fewest()));
              assertEquals(container.mostQuarts(), Fraction.of(jars.most()));
              assertTrue(jars.fewest() <= jars.likely() && jars.likely() <= jars.most());
            });
  }
}
