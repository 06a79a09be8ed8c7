package jarwright.ask;

import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.TableRow;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is asked of the tables once the food is known.
 *
 * @param products the likeliest first
 * @param others more that have the words; asked only what may be put up instead
 * @param methods any where it is empty
 * @param untestedJar why a jar that was asked for has no process, where it serves few products
 * @param longTimes whether hours were said, as for vegetables in a pot of boiling water
 */
public record TableQuestion(
    List<Product> products,
    List<Product> others,
    Optional<Pack> pack,
    Optional<JarSize> jar,
    List<Method> methods,
    Optional<Untested> untestedJar,
    boolean longTimes) {
  public TableQuestion {
    products = List.copyOf(products);
    others = List.copyOf(others);
    methods = List.copyOf(methods);
  }

  /** What the tables say. */
  public sealed interface Finding {

    /** The rows, product by product, and the products that have some. */
    record Rows(List<Product> products, List<TableRow> rows) implements Finding {}

    /**
     * The first product has no process in boiling water.
     *
     * @param others among those asked for that have one, as its pickle
     */
    record NeedsPressure(Product product, List<Product> others) implements Finding {}

    /** Nothing of the products in the jar, pack or method that was asked for. */
    record NoSuchSetting(List<Product> products, Optional<Untested> jar) implements Finding {}
  }

  /**
   * Asks the tables.
   *
   * @param book with the products of the question at least
   */
  public Finding ask(ProcessBook book) {
    boolean inBoilingWater = methods.equals(List.of(Method.BOILING_WATER));
    Product first = products.get(0);
    if ((inBoilingWater || (methods.isEmpty() && longTimes)) && !isBoiled(book, first)) {
      return new Finding.NeedsPressure(
          first,
          Stream.concat(products.stream(), others.stream())
              .filter(p -> isBoiled(book, p))
              .toList());
    }
    List<TableRow> rows =
        products.stream()
            .flatMap(p -> book.rows(p.id()).stream().filter(r -> fits(book, p, r)))
            .toList();
    List<Product> found =
        products.stream()
            .filter(p -> rows.stream().anyMatch(r -> r.productId().equals(p.id())))
            .toList();
    return rows.isEmpty() || (jar.isEmpty() && untestedJar.isPresent())
        ? new Finding.NoSuchSetting(products, untestedJar)
        : new Finding.Rows(found, rows);
  }

  private static boolean isBoiled(ProcessBook book, Product product) {
    return book.rows(product.id()).stream()
        .anyMatch(r -> r.method() == Method.BOILING_WATER && r.process().isPresent());
  }

  /** Whether a row of a product is among what was asked for. */
  public boolean fits(ProcessBook book, Product product, TableRow row) {
    return pack.map(row.pack()::covers).orElse(true)
        && jar.map(j -> row.jar() == book.printedFor(product, j)).orElse(true)
        && (methods.isEmpty() || methods.contains(row.method()));
  }

  /** The jar asked for, where another size's time serves it. */
  public Optional<JarSize> served(ProcessBook book, Product product) {
    return jar.filter(j -> book.printedFor(product, j) != j);
  }
}
