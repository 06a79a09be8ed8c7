package jarwright.cli;

import jarwright.ask.Meaning;
import jarwright.ask.Said;
import jarwright.ask.TableQuestion;
import jarwright.page.Wording;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.TableRow;
import jarwright.quantity.Altitude;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What "process" prints of the tables that it found. */
record ProcessAnswer(
    Call call, TableQuestion question, ProcessBook book, Wording words, ProductNames names) {

  private static final int MOST_TABLES = 6;

  /** What was made of the words. */
  void before(Meaning.Known known, Said said) {
    known
        .readAs()
        .forEach((word, read) -> say("process.read-as", Map.of("word", word, "known", read)));
    if (!said.times().isEmpty()) {
      say("process.times", Map.of("times", String.join(", ", said.times())));
    }
  }

  void print(TableQuestion.Finding.Rows found, Optional<Altitude> altitude) {
    boolean listed = found.products().size() > MOST_TABLES;
    if (listed) {
      say("process.many", Map.of("n", found.products().size()));
      list(found.products());
      return;
    }
    for (Product product : found.products()) {
      List<TableRow> own =
          found.rows().stream().filter(r -> r.productId().equals(product.id())).toList();
      call.out()
          .println(
              new ProcessText(product, names.of(product), altitude, words)
                  .text(own, question.served(book, product)));
    }
    if (altitude.isPresent()) {
      altitude(found, altitude.get());
    }
  }

  private void altitude(TableQuestion.Finding.Rows found, Altitude altitude) {
    String both = altitude.text(Style.english(Units.BOTH));
    say("process.own-altitude", Map.of("altitude", both));
    found.rows().stream()
        .map(TableRow::method)
        .distinct()
        .flatMap(method -> HighText.of(method, altitude).stream())
        .forEach(call.out()::println);
  }

  void after(Meaning.Known known, ProcessRefusal refusal) {
    if (!known.others().isEmpty()) {
      say("process.others", Map.of());
      list(known.others());
    }
    known.doubt().ifPresent(d -> call.out().println(refusal.caution(d)));
    say("process.caution", Map.of());
  }

  private void list(List<Product> products) {
    products.forEach(p -> call.out().println(p.id() + "  " + names.of(p)));
  }

  private void say(String key, Map<String, ?> values) {
    call.out().println(words.text(key, values));
  }
}
