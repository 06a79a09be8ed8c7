package jarwright.process;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * All tested processes, looked up by setting. It interpolates nothing: a setting without a printed
 * row has no process.
 */
public final class ProcessBook {
  /**
   * Sizes that take the time of another where the guide does not list them for a product: a
   * half-pint that of a pint, a 1-1/2-pint jar that of a quart. AIB 539 (2015) Guide 1, Using
   * tables for determining proper process times; its contents list that section on p. 1-22, which
   * nobody here has seen. No smaller or larger step is allowed, and none the other way. The guide
   * says so of times alone, so a jar with a canner routine of its own, as fish in quarts, serves no
   * other.
   */
  private static final Map<JarSize, JarSize> SERVED_BY =
      Map.of(JarSize.HALF_PINT, JarSize.PINT, JarSize.ONE_AND_A_HALF_PINT, JarSize.QUART);

  private final Map<String, Product> products = new LinkedHashMap<>();
  private final Map<String, List<TableRow>> rows = new LinkedHashMap<>();
  private final Map<String, List<Formula>> formulas = new LinkedHashMap<>();
  private final List<TableRow> all;
  private final List<SyrupRow> syrups;

  /** Takes what its reader has checked, each list in the guide's order. */
  public ProcessBook(
      List<Product> products, List<TableRow> rows, List<Formula> formulas, List<SyrupRow> syrups) {
    products.forEach(p -> this.products.put(p.id(), p));
    rows.forEach(r -> this.rows.computeIfAbsent(r.productId(), id -> new ArrayList<>()).add(r));
    formulas.forEach(
        f -> this.formulas.computeIfAbsent(f.productId(), id -> new ArrayList<>()).add(f));
    this.all = List.copyOf(rows);
    this.syrups = List.copyOf(syrups);
  }

  public Optional<Product> product(String id) {
    return Optional.ofNullable(products.get(id));
  }

  /** All products in the guide's order. */
  public List<Product> products() {
    return List.copyOf(products.values());
  }

  /** Every row of every product in the guide's order. */
  public List<TableRow> rows() {
    return all;
  }

  /** Every row of a product in the guide's order; none where the product is unknown. */
  public List<TableRow> rows(String productId) {
    return List.copyOf(rows.getOrDefault(productId, List.of()));
  }

  /** The fixed formulas of a product: none, one, or one for each printed yield. */
  public List<Formula> formulas(String productId) {
    return List.copyOf(formulas.getOrDefault(productId, List.of()));
  }

  /** Sugar and water for a strength, from the load whose jars are nearest the given size. */
  public SyrupRow syrup(Syrup strength, JarSize jar) {
    return syrups.stream()
        .filter(s -> s.syrup() == strength && s.jar().compareTo(jar) >= 0)
        .findFirst()
        .or(() -> syrups.stream().filter(s -> s.syrup() == strength).reduce((a, b) -> b))
        .orElseThrow(() -> new IllegalArgumentException("no row for " + strength + " syrup"));
  }

  /** The size whose rows hold for a jar: its own where the guide lists it for the product. */
  public JarSize printedFor(Product product, JarSize jar) {
    List<TableRow> own = rowsOf(product);
    JarSize served = SERVED_BY.getOrDefault(jar, jar);
    boolean isListed = !keep(own, r -> r.jar() == jar).isEmpty();
    boolean isAlone = !keep(own, r -> r.jar() == served && r.isForItsJarAlone()).isEmpty();
    return isListed || isAlone ? jar : served;
  }

  /** What the guide says of a setting. */
  public Answer lookUp(Setting asked) {
    JarSize jar = asked.jar();
    JarSize printed = printedFor(asked.product(), jar);
    if (printed == jar) {
      return lookUpPrinted(asked, jar);
    }
    return lookUpPrinted(asked, printed)
        .<Answer>fold(
            found -> new Answer.Found(found.rows(), Optional.of(printed)),
            closed -> closed,
            gap -> gap);
  }

  private List<TableRow> rowsOf(Product product) {
    return rows.getOrDefault(product.id(), List.of());
  }

  private Answer lookUpPrinted(Setting asked, JarSize jar) {
    int feet = asked.altitude().feetRoundedUp();
    List<TableRow> all = rowsOf(asked.product());
    List<TableRow> left = keep(all, r -> r.method() == asked.method());
    if (left.isEmpty()) {
      return new Answer.NotCovered(Answer.Gap.METHOD, testedAt(feet, all));
    }
    left = keep(left, r -> r.pack().covers(asked.pack()));
    if (left.isEmpty()) {
      return new Answer.NotCovered(Answer.Gap.PACK, testedAt(feet, all));
    }
    left = keep(left, r -> r.jar() == jar);
    if (left.isEmpty()) {
      return new Answer.NotCovered(Answer.Gap.JAR, testedAt(feet, all));
    }
    left = keep(left, r -> r.band().holds(feet));
    if (left.isEmpty()) {
      return new Answer.NotCovered(Answer.Gap.ALTITUDE, testedAt(feet, all));
    }
    List<TableRow> open = keep(left, r -> r.process().isPresent());
    return open.isEmpty()
        ? new Answer.NotRecommended(left.get(0), testedAt(feet, all))
        : new Answer.Found(open, Optional.empty());
  }

  private static List<TableRow> testedAt(int feet, List<TableRow> rows) {
    return keep(rows, r -> r.band().holds(feet) && r.process().isPresent());
  }

  private static List<TableRow> keep(List<TableRow> rows, Predicate<TableRow> test) {
    List<TableRow> kept = new ArrayList<>();
    for (TableRow row : rows) {
      if (test.test(row)) {
        kept.add(row);
      }
    }
    return kept;
  }
}
