package jarwright.cli;

import jarwright.files.LabelStocks;
import jarwright.label.LabelsSheet;
import jarwright.page.LabelStock;
import jarwright.page.PaperSize;
import jarwright.page.Registration;
import jarwright.page.Wording;
import jarwright.plan.Kitchen;
import jarwright.plan.Paper;
import jarwright.problem.Nearest;
import jarwright.problem.Refused;
import jarwright.render.WordBundle;
import java.io.IOException;
import java.util.Optional;
import org.apache.commons.cli.Option;

/** What a sheet is printed on and in which language: an option, the kitchen, the usual. */
final class SheetOptions {
  static final String LANGUAGE = "language";

  private final Call call;
  private final Optional<Kitchen> kitchen;

  SheetOptions(Call call, Optional<Kitchen> kitchen) {
    this.call = call;
    this.kitchen = kitchen;
  }

  static Option language() {
    return CommonOptions.withValue(
        null, LANGUAGE, "LANG", String.join(" or ", WordBundle.LANGUAGES) + " on paper");
  }

  /** The stock of that name, else the kitchen's, else the usual one. */
  LabelStock stock(Optional<String> name) throws IOException, Refused {
    LabelStocks stocks = LabelStocks.read(call.pantry());
    if (name.isPresent()) {
      return stocks.named(name.get());
    }
    return kitchen.isPresent() ? stocks.forKitchen(kitchen.get()) : stocks.usual(Paper.LETTER);
  }

  /** The kitchen's correction of its printer. */
  Registration registration() {
    return kitchen.map(LabelsSheet::registration).orElse(Registration.TRUE);
  }

  /** The kitchen's paper, else letter. */
  PaperSize paper() {
    return PaperSize.parse(kitchen.map(Kitchen::paper).orElse(Paper.LETTER).id());
  }

  Wording words() throws Usage {
    return WordBundle.load(
        asked(call)
            .or(() -> kitchen.map(Kitchen::language))
            .orElse(WordBundle.LANGUAGES.get(0)));
  }

  /**
   * The language that the call names, if it does.
   *
   * @throws Usage where there is no such language
   */
  static Optional<String> asked(Call call) throws Usage {
    Optional<String> asked = call.value(LANGUAGE);
    if (asked.isPresent() && !WordBundle.LANGUAGES.contains(asked.get())) {
      throw new Usage(
          "--"
              + LANGUAGE
              + " "
              + asked.get()
              + ": "
              + Nearest.remedy(asked.get(), WordBundle.LANGUAGES));
    }
    return asked;
  }
}
