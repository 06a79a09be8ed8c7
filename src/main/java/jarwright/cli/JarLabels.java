package jarwright.cli;

import jarwright.batch.BatchRecord;
import jarwright.files.HouseholdFolder;
import jarwright.label.JarLabel;
import jarwright.lot.LotCode;
import jarwright.page.Wording;
import jarwright.pantry.Advice;
import jarwright.pantry.Jar;
import jarwright.plan.Kitchen;
import jarwright.problem.Place;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import java.io.IOException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The label that each jar gets now: that of its lot's frozen record for a sound or planned one, a
 * refrigerator label for one that must not be shelved, none for one that must not be eaten.
 */
final class JarLabels {
  private final HouseholdFolder house;
  private final Optional<Kitchen> kitchen;
  private final Wording words;
  private final ProductNames names;
  private final OffsetDateTime now;
  private final Map<LotCode, JarLabel> firsts = new LinkedHashMap<>();

  JarLabels(Books books, Wording words) throws IOException, Refused {
    this.house = books.house();
    this.kitchen = books.kitchen();
    this.words = words;
    this.names = new ProductNames(words.language());
    this.now = books.now();
  }

  /**
   * The jar's label; empty where it gets none.
   *
   * @throws Refused where its lot's record is missing or damaged
   */
  Optional<JarLabel> of(Jar jar) throws IOException, Refused {
    if (jar.doubt().isPresent()) {
      return Optional.empty();
    }
    if (Advice.isLabelled(jar, now)) {
      return Optional.of(shelf(jar));
    }
    Optional<LocalDate> eatBy = jar.eatBy(now);
    return eatBy.isEmpty() ? Optional.empty() : Optional.of(cold(jar, eatBy.get()));
  }

  private JarLabel cold(Jar jar, LocalDate eatBy) throws IOException, Refused {
    long days = ChronoUnit.DAYS.between(now.toLocalDate(), eatBy);
    return shelf(jar).cold(Math.max(1, Math.toIntExact(days)), eatBy);
  }

  private JarLabel shelf(Jar jar) throws IOException, Refused {
    LotCode lot = jar.id().lot();
    JarLabel first = firsts.get(lot);
    if (first == null) {
      first = jar.facts().madeHere() ? planned(jar) : old(jar);
      firsts.put(lot, first);
    }
    return first.of(jar.id().number());
  }

  private JarLabel planned(Jar jar) throws IOException, Refused {
    LotCode lot = jar.id().lot();
    Optional<BatchRecord> record = house.record(lot);
    if (record.isEmpty()) {
      throw new Refused(
          Place.wholeFile(lot.toString()),
          "the lot's record is missing from the household's folder",
          "put batches/" + lot + ".yaml back from a copy");
    }
    return JarLabel.of(
        record.get(),
        names.of(jar.facts()),
        kitchen.map(Kitchen::units).orElse(Units.BOTH),
        kitchen.flatMap(Kitchen::link),
        words);
  }

  private JarLabel old(Jar jar) throws Refused {
    if (jar.facts().useBy().isEmpty()) {
      throw new Refused(
          Place.wholeFile(jar.id().lot().toString()),
          "these jars have no use-by date, so they get no label",
          "If you do not know how they were canned, throw them away");
    }
    return JarLabel.of(
        jar.id().lot(),
        jar.facts(),
        jar.origin(),
        names.of(jar.facts()),
        kitchen.flatMap(Kitchen::link),
        words);
  }
}
