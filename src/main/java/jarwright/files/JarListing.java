package jarwright.files;

import jarwright.pantry.Advice;
import jarwright.pantry.Doubt;
import jarwright.pantry.Jar;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Spot;
import jarwright.pantry.Standing;
import java.io.IOException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;

/** Jars for other programs, a row for each: what is in it, where it is or what became of it. */
public final class JarListing {
  private static final List<String> COLUMNS =
      List.of(
          "jar",
          "product",
          "size",
          "pack",
          "packed",
          "use-by",
          "standing",
          "state",
          "shelf",
          "since",
          "why",
          "doubt",
          "from",
          "lids",
          "process");

  private JarListing() {}

  /** A table with a header line. */
  public static String csv(List<Jar> jars, OffsetDateTime now) throws IOException {
    return listing(jars, now).csv(Cell::out);
  }

  /** A list of objects with the same names; what is empty is left out. */
  public static String json(List<Jar> jars, OffsetDateTime now) throws IOException {
    return listing(jars, now).json();
  }

  private static Listing listing(List<Jar> jars, OffsetDateTime now) {
    return new Listing(COLUMNS, Set.of(), jars.stream().map(j -> cells(j, now)).toList());
  }

  private static List<String> cells(Jar jar, OffsetDateTime now) {
    LotFacts facts = jar.facts();
    Standing standing = jar.standingAt(now);
    String since = standing.since().map(t -> t.toLocalDate().toString()).orElse("");
    String why = standing instanceof Standing.Tossed gone ? gone.why() : "";
    return List.of(
        jar.id().toString(),
        facts.shownName(),
        facts.jar(),
        facts.pack(),
        facts.packed().map(LocalDate::toString).orElse(""),
        jar.deadline().map(LocalDate::toString).orElse(""),
        standing.kind().word(),
        Advice.word(jar, now).word(),
        standing.isHere() ? Spot.of(jar.standing()).name() : "",
        since,
        why,
        jar.doubt().map(Doubt::cause).map(Object::toString).orElse(""),
        facts.from(),
        facts.lids(),
        ProcessWord.of(jar.origin()));
  }
}
