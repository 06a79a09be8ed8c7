package jarwright.pantry;

import jarwright.ask.FoodSearch;
import jarwright.ask.Meaning;
import jarwright.ask.NamedFoods;
import jarwright.ask.Untested;
import jarwright.pantry.Origin.Lack;
import jarwright.process.AcidRule;
import jarwright.process.JarSize;
import jarwright.process.Pack;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.TableRow;
import jarwright.process.TestedProcess;
import jarwright.quantity.GaugePressure;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What the tables of tested processes know of foods. What they do not know counts as low-acid. */
public final class Foods {
  /** Knows no food. */
  public static final Foods NONE =
      new Foods(
          new ProcessBook(List.of(), List.of(), List.of(), List.of()),
          new FoodSearch(List.of(), List.of(), List.of()));

  /** Words that the search understands at a time, and the longest name of theirs. */
  private static final int PIECE = 30;

  private static final int OVERLAP = 8;

  private final ProcessBook book;
  private final FoodSearch search;
  private final NamedFoods names;

  public Foods(ProcessBook book, FoodSearch search) {
    this.book = book;
    this.search = search;
    this.names = new NamedFoods(search);
  }

  /**
   * Whether a product is acid food, or made so by its formula or by measured acid: the guide has a
   * process for it in boiling water, which it has for no other. AIB 539 (2015) Guide 1, Food
   * acidity and processing methods.
   */
  public boolean isAcid(String product) {
    return book.rows(product).stream()
        .anyMatch(r -> !r.method().isPressure() && r.process().isPresent());
  }

  /**
   * What jars from elsewhere are, by the tables.
   *
   * @param known what was told of them in words
   */
  public Origin origin(LotFacts facts, String known, Optional<Vouched> vouched) {
    Optional<Untested> refused = refused(facts, known);
    if (refused.isPresent()) {
      return new Origin.Refused(refused.get());
    }
    List<Product> meant = meant(facts);
    ToldProcess told = vouched.map(Vouched::process).orElse(ToldProcess.NOTHING);
    Optional<Lack> lack = lack(meant, facts, told);
    if (lack.isPresent()) {
      return new Origin.Unsafe(lack.get());
    }
    boolean acid = !meant.isEmpty() && meant.stream().allMatch(p -> isAcid(p.id()));
    if (acid) {
      return vouched.<Origin>map(Origin.ByWord::new).orElseGet(Origin.Unvouched::new);
    }
    if (vouched.isEmpty()) {
      return new Origin.Unsafe(Lack.NOBODYS_WORD);
    }
    if (meant.size() != 1) {
      return new Origin.Unsafe(Lack.FOOD_NOT_KNOWN);
    }
    return isTold(facts, told)
        ? new Origin.ByWord(vouched.get())
        : new Origin.Unsafe(Lack.PROCESS_NOT_TOLD);
  }

  /** By what they are called, and by how they are said to have been made. */
  private Optional<Untested> refused(LotFacts facts, String known) {
    boolean tabled = book.product(facts.product()).isPresent();
    Stream<String> said =
        tabled
            ? Stream.of(known)
            : Stream.of(facts.product(), facts.name(), known, facts.product() + " " + known);
    return said.flatMap(Foods::pieces).flatMap(s -> refused(s).stream()).findFirst();
  }

  /** A long text in pieces that overlap, so that no name in it is cut. */
  private static Stream<String> pieces(String text) {
    List<String> words = List.of(text.strip().split("\\s+"));
    return IntStream.iterate(0, from -> from < words.size(), from -> from + PIECE - OVERLAP)
        .mapToObj(from -> words.subList(from, Math.min(words.size(), from + PIECE)))
        .map(piece -> String.join(" ", piece));
  }

  private Optional<Untested> refused(String said) {
    return search.hear(said).food() instanceof Meaning.Refused refused
        ? Optional.of(refused.untested())
        : Optional.empty();
  }

  /** The product of that id; else all that its name can mean. */
  private List<Product> meant(LotFacts facts) {
    return book.product(facts.product())
        .map(List::of)
        .orElseGet(() -> names.meant(facts.shownName()));
  }

  private static boolean isTold(LotFacts facts, ToldProcess told) {
    return JarSize.named(facts.jar()).isPresent()
        && told.method().isPresent()
        && told.minutes().isPresent()
        && told.pressure().isPresent()
        && told.altitude().isPresent();
  }

  /** What the tables lack, or what lacks by the tables, as far as it is told. */
  private Optional<Lack> lack(List<Product> meant, LotFacts facts, ToldProcess told) {
    if (meant.isEmpty()) {
      return Optional.empty();
    }
    List<TableRow> rows =
        meant.stream()
            .flatMap(p -> book.rows(p.id()).stream())
            .filter(r -> r.process().isPresent())
            .toList();
    Optional<JarSize> jar = JarSize.named(facts.jar());
    if (jar.isPresent()) {
      rows = keep(rows, r -> r.jar() == printed(r, jar.get()));
    }
    if (rows.isEmpty()) {
      return Optional.of(Lack.JAR);
    }
    Optional<Pack> pack = Pack.named(facts.pack()).filter(p -> p != Pack.RAW_OR_HOT);
    if (pack.isPresent()) {
      rows = keep(rows, r -> r.pack().covers(pack.get()));
    }
    if (rows.isEmpty()) {
      return Optional.of(Lack.PACK);
    }
    if (told.method().isPresent()) {
      rows = keep(rows, r -> r.method() == told.method().get());
    }
    if (rows.isEmpty()) {
      return Optional.of(Lack.METHOD);
    }
    if (told.altitude().isPresent()) {
      rows = keep(rows, r -> r.band().holds(told.altitude().get().feetRoundedUp()));
    }
    if (rows.isEmpty()) {
      return Optional.of(Lack.ALTITUDE);
    }
    if (isShort(rows, told)) {
      return Optional.of(Lack.TOO_SHORT);
    }
    boolean dosed = meant.stream().anyMatch(p -> p.acid() instanceof AcidRule.PerJar);
    return dosed && told.acid() != Ticked.YES ? Optional.of(Lack.ACID) : Optional.empty();
  }

  private JarSize printed(TableRow row, JarSize jar) {
    return book.printedFor(book.product(row.productId()).orElseThrow(), jar);
  }

  /** Whether, of no food that is meant, what is told reaches a row in each pack it may have had. */
  private static boolean isShort(List<TableRow> rows, ToldProcess told) {
    return rows.stream()
        .map(TableRow::productId)
        .distinct()
        .allMatch(id -> isShortOfOne(keep(rows, r -> r.productId().equals(id)), told));
  }

  private static boolean isShortOfOne(List<TableRow> rows, ToldProcess told) {
    return rows.stream()
        .map(TableRow::pack)
        .distinct()
        .anyMatch(
            pack -> rows.stream().filter(r -> r.pack() == pack).noneMatch(r -> reaches(told, r)));
  }

  /** What is not told is not held against it here. */
  private static boolean reaches(ToldProcess told, TableRow row) {
    TestedProcess tested = row.process().orElseThrow();
    boolean lasted = told.minutes().map(m -> m >= tested.minutes()).orElse(true);
    Optional<GaugePressure> needed = tested.pressure();
    boolean hot =
        needed.isEmpty()
            || told.pressure().isEmpty()
            || told.pressure().get().compareTo(needed.get()) >= 0;
    return lasted && hot;
  }

  private static List<TableRow> keep(List<TableRow> rows, Predicate<TableRow> test) {
    return rows.stream().filter(test).toList();
  }
}
