package jarwright.cli;

import jarwright.files.VerdictTable;
import jarwright.pantry.Advice;
import jarwright.pantry.Jar;
import jarwright.pantry.JarWord;
import jarwright.pantry.LotFacts;
import jarwright.pantry.OldList;
import jarwright.pantry.Origin;
import jarwright.pantry.Pantry;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** What became of the rows of an old list. */
final class ImportText {
  private final Books books;
  private final Pantry pantry;
  private final VerdictText words;
  private final JarText text;

  /** Of a ledger in which they are recorded. */
  ImportText(Books books) throws IOException, Refused {
    this.books = books;
    this.pantry = books.pantry();
    this.words = new VerdictText(Units.BOTH);
    this.text = new JarText(words, VerdictTable.read(), books.now());
  }

  void print(Call call, List<OldList.Placed> placed) {
    List<OldList.Placed> fresh = placed.stream().filter(OldList.Placed::isNew).toList();
    List<OldList.Placed> known = placed.stream().filter(p -> !p.isNew()).toList();
    List<Jar> jars = new ArrayList<>();
    fresh.forEach(p -> call.out().print(line(p, "", jars)));
    if (!known.isEmpty()) {
      call.out().println("In the records already, and left as they are there:");
      known.forEach(p -> call.out().print(line(p, "  ", jars)));
      call.out().println("A row that is other jars of the same kind needs another note.");
    }
    hints(jars).forEach(h -> call.out().print(Indented.of("", "", h)));
    call.out().println(Help.CAUTION);
  }

  private String line(OldList.Placed placed, String indent, List<Jar> jars) {
    Jar jar = pantry.jar(placed.lot().jar(1)).orElseThrow();
    jars.add(jar);
    LotFacts facts = jar.facts();
    String why = String.join(" ", text.reasons(jar));
    return Indented.of(
        indent,
        indent + "    ",
        placed.lot()
            + "  "
            + ShelfText.jars(placed.row().jars())
            + " of "
            + JarText.food(facts)
            + facts.packed().map(d -> ", packed " + d).orElse(", day of packing not known")
            + (facts.shelf().isEmpty() ? "" : ", " + facts.shelf())
            + ": "
            + text.says(jar)
            + (text.says(jar).endsWith(".") ? " " : ". ")
            + why);
  }

  /** What to do about the jars, each said once. */
  private List<String> hints(List<Jar> jars) {
    List<String> hints = new ArrayList<>();
    if (has(jars, JarWord.THROW_AWAY)) {
      hints.add(words.spoiled() + " Then: jarwright toss LOT/all --why TEXT");
    }
    Origin unknown = new Origin.Unsafe(Origin.Lack.NOBODYS_WORD);
    if (jars.stream().anyMatch(j -> j.origin().equals(unknown))) {
      hints.add(
          "If the tables know a food by another name, undo this and import it by that name:"
              + " jarwright process WORD. Low-acid food that was canned by a tested process in a"
              + " pressure canner: fill in size, method, minutes, pressure, altitude, vouched-by"
              + " and source in the list, and import it again.");
    }
    if (has(jars, JarWord.UNVOUCHED)) {
      hints.add(
          "Acid food that was canned by a tested process: jarwright trace LOT --vouched-by NAME"
              + " --source TEXT, or the columns vouched-by and source in the list.");
    }
    return hints;
  }

  private boolean has(List<Jar> jars, JarWord word) {
    return jars.stream().anyMatch(j -> Advice.word(j, books.now()) == word);
  }
}
