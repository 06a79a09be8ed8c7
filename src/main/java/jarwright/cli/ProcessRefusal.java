package jarwright.cli;

import jarwright.ask.Meaning;
import jarwright.ask.TableQuestion;
import jarwright.ask.Untested;
import jarwright.files.ProcessTables;
import jarwright.page.Wording;
import jarwright.problem.Place;
import jarwright.problem.Problem;
import jarwright.problem.Refused;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.TableRow;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Says why what was looked up has no tested process, and what there is instead. */
final class ProcessRefusal {
  private static final int MOST_PRODUCTS = 6;
  private static final String MARGIN = "  ";

  private final String asked;
  private final Wording words;
  private final ProductNames names;
  private final ProcessTables tables;

  /**
   * @param asked all that was asked for, as it was typed
   * @param words of the answer
   */
  ProcessRefusal(String asked, Wording words, ProductNames names, ProcessTables tables) {
    this.asked = asked;
    this.words = words;
    this.names = names;
    this.tables = tables;
  }

  /** A food or way that is known to have no tested process. */
  Refused of(Meaning.Refused why) throws Refused {
    return untested(why.untested(), why.near());
  }

  private Refused untested(Untested untested, List<Product> near) throws Refused {
    Untested.Told told = untested.told(words.language());
    StringBuilder out = new StringBuilder();
    out.append(words.text("process.untested", Map.of("what", told.what())));
    line(out, "process.instead", told.instead());
    Set<Product> instead = new LinkedHashSet<>(near);
    for (Product product : tables.products()) {
      if (untested.tested().contains(product.id())) {
        instead.add(product);
      }
    }
    products(out, "process.tested", instead);
    line(out, "process.why", told.why());
    line(out, "process.source", untested.source().place());
    line(out, "process.ask", words.text("process.ask-whom"));
    return refused(out);
  }

  private void line(StringBuilder out, String key, String text) {
    String first = MARGIN + words.text(key) + " ";
    out.append('\n').append(Indented.of(first, MARGIN + MARGIN, text).stripTrailing());
  }

  private void products(StringBuilder out, String key, Set<Product> products) {
    if (products.isEmpty()) {
      return;
    }
    out.append('\n').append(MARGIN).append(words.text(key));
    for (Product product : products.stream().limit(MOST_PRODUCTS).toList()) {
      out.append('\n').append(MARGIN).append(MARGIN).append(names.of(product));
      out.append(": jarwright process --product ").append(product.id());
    }
  }

  private Refused refused(StringBuilder text) {
    return new Refused(List.of(problem(text)));
  }

  /** The first line is broken where its place, which stands before it, leaves off. */
  private Problem problem(StringBuilder text) {
    int end = text.indexOf("\n") < 0 ? text.length() : text.indexOf("\n");
    String before = asked + ": ";
    String first = Indented.of(before, MARGIN + MARGIN, text.substring(0, end)).stripTrailing();
    String what = first.substring(before.length()) + text.substring(end);
    return new Problem(Place.wholeFile(asked), what, "");
  }

  /** No product and no refusal has all of the words. */
  Refused of(Meaning.Unknown unknown) {
    StringBuilder out = new StringBuilder();
    out.append(
        unknown.words().isEmpty()
            ? words.text("process.no-such-food")
            : words.text(
                "process.not-understood", Map.of("words", String.join(", ", unknown.words()))));
    if (!unknown.guesses().isEmpty()) {
      line(out, "process.guesses", String.join(", ", unknown.guesses()) + "?");
    }
    products(out, "process.near", new LinkedHashSet<>(unknown.near()));
    line(out, "process.instead", words.text("process.no-process"));
    line(out, "process.ask", words.text("process.ask-whom"));
    return refused(out);
  }

  /** What to say of a product that the tables have and a later source advises against. */
  String caution(Untested doubt) {
    Untested.Told told = doubt.told(words.language());
    return words.text(
        "process.doubt",
        Map.of("why", told.why(), "source", doubt.source().place(), "instead", told.instead()));
  }

  /** A food that is not acid enough for boiling water. */
  Refused of(TableQuestion.Finding.NeedsPressure low, ProcessBook book) {
    StringBuilder out = new StringBuilder();
    out.append(words.text("process.needs-pressure", Map.of("food", names.of(low.product()))));
    line(out, "process.instead", tested(low.product(), book));
    products(out, "process.boiled", new LinkedHashSet<>(low.others()));
    line(out, "process.why", words.text("process.needs-pressure-why"));
    line(out, "process.source", words.text("process.needs-pressure-source"));
    line(out, "process.ask", words.text("process.ask-whom"));
    return refused(out);
  }

  private String tested(Product product, ProcessBook book) {
    List<TableRow> tested =
        book.rows(product.id()).stream().filter(r -> r.process().isPresent()).toList();
    return words.text("process.tested-for", Map.of("settings", new TestedText(words).of(tested)));
  }

  /** The products are in the tables, but nothing of them in the pack, jar or method asked for. */
  Refused of(TableQuestion.Finding.NoSuchSetting none, ProcessBook book) throws Refused {
    if (none.jar().isPresent()) {
      return untested(none.jar().get(), List.of());
    }
    List<Problem> problems = new ArrayList<>();
    for (Product product : none.products().stream().limit(MOST_PRODUCTS).toList()) {
      StringBuilder out = new StringBuilder();
      out.append(words.text("process.no-setting", Map.of("food", names.of(product))));
      line(out, "process.instead", tested(product, book));
      line(out, "process.ask", words.text("process.ask-whom"));
      problems.add(problem(out));
    }
    return new Refused(problems);
  }
}
