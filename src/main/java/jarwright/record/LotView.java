package jarwright.record;

import jarwright.page.Wording;
import jarwright.pantry.Lot;
import jarwright.pantry.LotFacts;
import jarwright.process.JarSize;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** What is the same for all jars of a lot, as every page shows it. */
final class LotView {
  private final Wording words;
  private final Function<LotFacts, String> productName;

  LotView(Wording words, Function<LotFacts, String> productName) {
    this.words = words;
    this.productName = productName;
  }

  String product(Lot lot) {
    String name = productName.apply(lot.facts());
    return name.isEmpty() ? lot.facts().product() : name;
  }

  /** Dates in ISO 8601; texts may be empty. */
  Map<String, Object> facts(Lot lot) {
    LotFacts facts = lot.facts();
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("product", product(lot));
    view.put("pack", word("pack." + facts.pack(), facts.pack()));
    view.put(
        "jar", JarSize.named(facts.jar()).map(j -> words.count("jar." + j, 1)).orElse(facts.jar()));
    view.put("lot", lot.code().toString());
    view.put("packed", facts.packed().map(LocalDate::toString).orElse(""));
    view.put("useBy", facts.useBy().map(LocalDate::toString).orElse(""));
    view.put("from", facts.from());
    view.put("lids", facts.lids());
    view.put("note", facts.note());
    view.put("madeHere", facts.madeHere());
    return view;
  }

  private String word(String key, String otherwise) {
    return words.has(key) ? words.text(key) : otherwise;
  }
}
