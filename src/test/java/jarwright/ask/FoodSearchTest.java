package jarwright.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.ProcessTables;
import jarwright.files.SayingRows;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** What people say, and what is understood; common usage, no source. */
class FoodSearchTest {
  private static FoodSearch search;

  @BeforeAll
  static void read() throws Exception {
    search = SayingRows.search(ProcessTables.ofProgram());
  }

  /** Product first found, {@code !refusal}, {@code ?words not understood}, or {@code -}. */
  static String answer(Meaning food) {
    if (food instanceof Meaning.Known known) {
      return known.products().get(0).id();
    }
    if (food instanceof Meaning.Refused refused) {
      return "!" + refused.untested().key();
    }
    return food instanceof Meaning.Unknown unknown ? "?" + String.join(" ", unknown.words()) : "-";
  }

  private static String said(Said said) {
    List<String> parts = new ArrayList<>();
    said.pack().ifPresent(p -> parts.add(p.id()));
    said.jar().ifPresent(j -> parts.add(j.id()));
    said.untestedJar().ifPresent(j -> parts.add("untested " + j.key()));
    said.methods().forEach(m -> parts.add(m.id()));
    parts.addAll(said.times());
    said.altitude().ifPresent(parts::add);
    return String.join(" ", parts);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/jarwright/ask/asked.csv", useHeadersInDisplayName = true)
  void whatIsAskedIsUnderstood(String asked, String answer, String said) {
    Heard heard = search.hear(asked);
    assertEquals(answer, answer(heard.food()), asked);
    assertEquals(said == null ? "" : said, said(heard.said()), asked);
  }

  @ParameterizedTest
  @CsvSource({"mango sauce, mango-sauce", "peaches, peaches-halved-or-sliced"})
  void oneProductAloneIsMeantOnlyByANameOfItsOwn(String asked, String id) {
    Meaning.Known known = (Meaning.Known) search.hear(asked).food();
    assertEquals(id, known.products().get(0).id());
    assertEquals(asked.equals("mango sauce"), known.one().isPresent());
  }

  @Test
  void aMistypedWordIsToldAndNeverTakenForSure() {
    Meaning.Known known = (Meaning.Known) search.hear("apple juyce").food();
    assertEquals("apple-juice", known.products().get(0).id());
    assertTrue(known.one().isEmpty());
    assertEquals("juice", known.readAs().get("juyce"));
  }
}
