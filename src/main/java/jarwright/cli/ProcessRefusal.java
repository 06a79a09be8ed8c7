package jarwright.cli;

import jarwright.batch.Tested;
import jarwright.problem.Place;
import jarwright.problem.Problem;
import jarwright.problem.Refused;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.TableRow;
import jarwright.process.Untested;
import jarwright.process.UntestedSearch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says why what was looked up has no tested process, and what there is instead. */
final class ProcessRefusal {
  private static final int MOST_PRODUCTS = 4;

  private final UntestedSearch untested;

  ProcessRefusal(UntestedSearch untested) {
    this.untested = untested;
  }

  /**
   * Refuses a food or way that is known to have none.
   *
   * @param product the words without those for pack, jar and method
   */
  void check(String asked, String product) throws Refused {
    Optional<Untested> way = untested.isProduct(asked) ? Optional.empty() : untested.called(asked);
    if (way.isEmpty() && !untested.isProduct(product)) {
      way = untested.find(product);
    }
    if (way.isPresent()) {
      throw new Refused(List.of(problem(asked, way.get())));
    }
  }

  /** What to say of a product that the tables have and a later source advises against. */
  Optional<String> caution(String asked) {
    return untested.isProduct(asked)
        ? untested
            .find(asked)
            .map(u -> "Caution: " + u.why() + " (" + u.source() + ") " + u.remedy() + ".")
        : Optional.empty();
  }

  /** The products are in the tables, but nothing of them in the pack, jar or method asked for. */
  Refused of(String asked, List<Product> products, ProcessBook book) {
    List<Problem> problems = new ArrayList<>();
    untested.find(asked).ifPresent(way -> problems.add(problem(asked, way)));
    for (Product product : products.stream().limit(MOST_PRODUCTS).toList()) {
      List<TableRow> tested =
          book.rows(product.id()).stream().filter(r -> r.process().isPresent()).toList();
      problems.add(
          new Problem(
              Place.wholeFile(asked),
              product.id() + ": no such jar, pack or method is tested",
              "tested: "
                  + Tested.summary(tested)
                  + "; else freeze or refrigerate, and ask your local extension service"));
    }
    return new Refused(problems);
  }

  private static Problem problem(String asked, Untested way) {
    return new Problem(
        Place.wholeFile(asked),
        way.what() + ": no tested process. " + way.why() + " (" + way.source() + ")",
        "instead: " + way.remedy());
  }
}
