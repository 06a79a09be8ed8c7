package jarwright.cli;

import jarwright.files.NameTables;
import jarwright.pantry.LotFacts;
import jarwright.problem.Refused;
import jarwright.process.Product;
import java.io.IOException;
import java.util.Map;

/** Names of products in the language of the print-outs; their English ones where that has none. */
final class ProductNames {
  private final Map<String, String> translated;
  private final Map<String, String> ingredients;

  ProductNames(String language) throws IOException, Refused {
    this.translated = NameTables.products(language);
    this.ingredients = NameTables.ingredients(language);
  }

  String of(Product product) {
    return translated.getOrDefault(product.id(), product.name());
  }

  /** For jars from an old list too, which keep the name they came with. */
  String of(LotFacts facts) {
    return translated.getOrDefault(facts.product(), facts.name());
  }

  /** Of an ingredient or a note of a formula. */
  String ingredient(String english) {
    return ingredients.getOrDefault(english, english);
  }
}
