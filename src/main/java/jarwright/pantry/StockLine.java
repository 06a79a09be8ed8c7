package jarwright.pantry;

import jarwright.lot.LotCode;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Jars in the house that are alike: of one lot, at one place, of which the same is to be said.
 *
 * @param spot where the ledger has them, whatever has run out since
 * @param deadline the day by which they are to be used, eaten or canned again; empty where nobody
 *     knows or none is set
 * @param moment by which they are to be canned again, or from which their seals may be tested;
 *     empty for others
 */
public record StockLine(
    LotCode lot,
    LotFacts facts,
    Origin origin,
    JarWord word,
    Spot spot,
    Optional<LocalDate> deadline,
    Optional<OffsetDateTime> moment,
    JarNumbers jars) {

  private record Key(
      LotCode lot,
      JarWord word,
      Spot spot,
      Optional<LocalDate> deadline,
      Optional<OffsetDateTime> moment) {}

  /** All jars that are in the house, gathered into lines, first to use first. */
  public static List<StockLine> of(Stream<Jar> jars, OffsetDateTime now) {
    Map<Key, List<Jar>> gathered = new LinkedHashMap<>();
    for (Jar jar : new UseOrder(now).of(jars)) {
      Key key =
          new Key(
              jar.id().lot(),
              Advice.word(jar, now),
              Spot.of(jar.standing()),
              jar.deadline(),
              jar.moment());
      gathered.computeIfAbsent(key, k -> new ArrayList<>()).add(jar);
    }
    List<StockLine> lines = new ArrayList<>();
    gathered.forEach(
        (key, same) ->
            lines.add(
                new StockLine(
                    key.lot(),
                    same.get(0).facts(),
                    same.get(0).origin(),
                    key.word(),
                    key.spot(),
                    key.deadline(),
                    key.moment(),
                    JarNumbers.of(same.stream().map(j -> j.id().number()).toList()))));
    return lines;
  }
}
