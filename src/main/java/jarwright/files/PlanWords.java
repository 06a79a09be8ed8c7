package jarwright.files;

import jarwright.ask.FoodSearch;
import jarwright.ask.Heard;
import jarwright.ask.Meaning;
import jarwright.ask.Said;
import jarwright.ask.Saying;
import jarwright.problem.Nearest;
import jarwright.problem.Refused;
import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Understands the values of a plan: the tables' own words, else what households call the same thing
 * in any language of the program. Where a name means more than one, all are offered.
 */
final class PlanWords {
  private final ProcessTables tables;
  private Optional<FoodSearch> search = Optional.empty();

  PlanWords(ProcessTables tables) {
    this.tables = tables;
  }

  /** The search that they are looked up by, read when it is first needed. */
  FoodSearch search() throws IOException, Refused {
    if (search.isEmpty()) {
      search = Optional.of(SayingRows.search(tables));
    }
    return search.get();
  }

  /** What a text says where every word of it is understood and none is a food or a time. */
  Optional<Said> hear(String text) throws IOException, Refused {
    Heard heard = search().hearAsWritten(text);
    boolean whole = heard.food() instanceof Meaning.Nothing && heard.said().times().isEmpty();
    return whole ? Optional.of(heard.said()) : Optional.empty();
  }

  /** One of the known words as it stands; case, and hyphens for spaces, are forgiven. */
  static <T> Optional<T> exact(
      String word, Function<String, Optional<T>> named, List<String> known) {
    return known.stream()
        .filter(k -> Fields.plain(k).equals(Fields.plain(word)))
        .findFirst()
        .flatMap(named);
  }

  /**
   * One of the known words, or what a household calls it; none, or a problem, otherwise.
   *
   * @param sense what the value is to be
   */
  <T> Optional<T> word(
      Fields fields,
      String key,
      Saying.Sense sense,
      Function<String, Optional<T>> named,
      List<String> known)
      throws IOException, Refused {
    Optional<String> word = fields.plainWord(key);
    if (word.isEmpty()) {
      return Optional.empty();
    }
    Optional<T> exact = exact(word.get(), named, known);
    if (exact.isPresent()) {
      return exact;
    }
    Collection<String> meant = search().called(sense, word.get());
    return one(fields, key, meant, known).flatMap(named);
  }

  /** The only thing meant; else a problem that offers all, or says that the value is not known. */
  static Optional<String> one(
      Fields fields, String key, Collection<String> meant, List<String> known) {
    TreeSet<String> ids = new TreeSet<>(meant);
    String said = "\"" + fields.said(key) + "\"";
    if (ids.size() > 1) {
      fields.problem(key, said + " can mean more than one", "write " + String.join(" or ", ids));
      return Optional.empty();
    }
    if (ids.isEmpty()) {
      fields.problem(key, said + " is not known", Nearest.remedy(fields.said(key), known));
      return Optional.empty();
    }
    return Optional.of(ids.first());
  }
}
