package jarwright.files;

import jarwright.lot.UseBy;
import jarwright.page.Language;
import jarwright.page.Registration;
import jarwright.plan.Canner;
import jarwright.plan.ClockHours;
import jarwright.plan.Kitchen;
import jarwright.plan.OwnTime;
import jarwright.plan.Paper;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.quantity.Altitude;
import jarwright.quantity.Fraction;
import jarwright.quantity.Length;
import jarwright.quantity.Units;
import jarwright.quantity.Volume;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads a kitchen from its keys. */
final class KitchenReader {
  static final List<String> KEYS =
      List.of(
          "household",
          AltitudeWord.KEY,
          "paper",
          "units",
          "language",
          "canners",
          "label-stock",
          "sheet-offset-right",
          "sheet-offset-down",
          "sheet-scale",
          "link",
          "months-to-use-by",
          "use-by-note",
          "burners",
          "zone",
          "clock",
          "pots",
          "times");
  private static final String TIMES = "times";
  private static final int MOST_BURNERS = 12;
  private static final Length MOST_OFFSET = Length.millimetres(Registration.MOST_OFFSET);
  private static final Volume SMALLEST_POT = Volume.parse("1 quart");
  private static final Volume LARGEST_POT = Volume.parse("60 quart");
  private static final String LINK = "https?://[A-Za-z0-9.-]{1,100}(?::[0-9]{1,5})?/?";

  private final Fields fields;
  private final PlanWords words;
  private final Problems problems;

  KitchenReader(Written.Keys written, PlanWords words, Problems problems) {
    Map<String, String> elsewhere =
        Map.of("kitchen", "write the kitchen's keys at the left margin of the kitchen file");
    this.fields = new Fields(written, "the kitchen", KEYS, elsewhere, problems);
    this.words = words;
    this.problems = problems;
  }

  /** The kitchen, or none where its altitude is not known or a canner not understood. */
  Optional<Kitchen> read() throws IOException, Refused {
    fields.require(
        AltitudeWord.KEY,
        "write it under kitchen: in the plan, or into kitchen.yaml, as altitude: 420 m or "
            + "altitude: 1400 ft");
    Optional<Altitude> altitude = AltitudeWord.read(fields, AltitudeWord.KEY);
    String household = fields.text("household").orElse("");
    Paper paper = fields.word("paper", Paper::named, Paper.ids()).orElse(Paper.LETTER);
    Units units = fields.word("units", KitchenReader::units, unitWords()).orElse(Units.BOTH);
    String language =
        fields.word("language", Optional::of, Language.tags()).orElse(Language.ENGLISH.tag());
    int before = problems.count();
    List<Canner> canners = canners();
    boolean misread = problems.count() > before;
    Optional<String> stock = fields.plainWord("label-stock");
    Length right = offset("sheet-offset-right");
    Length down = offset("sheet-offset-down");
    Fraction scale = scale();
    Optional<String> link = link();
    int months = months();
    OptionalInt burners = fields.count("burners", 1, MOST_BURNERS);
    Optional<ZoneId> zone = zone();
    ClockHours clock =
        fields
            .word("clock", ClockHours::named, ClockHours.ids())
            .orElse(ClockHours.usualWith(paper));
    List<Volume> pots = pots();
    List<OwnTime> times = times();
    if (misread) {
      return Optional.empty();
    }
    return altitude.map(
        height ->
            new Kitchen(
                household, height, paper, units, language, canners, stock, right, down, scale, link,
                months, burners, zone, clock, pots, times));
  }

  private static List<String> unitWords() {
    return Arrays.stream(Units.values()).map(Units::word).toList();
  }

  private static Optional<Units> units(String word) {
    return Arrays.stream(Units.values()).filter(u -> u.word().equals(word)).findFirst();
  }

  private List<Canner> canners() throws IOException, Refused {
    List<Canner> canners = new ArrayList<>();
    Optional<Written> written = fields.written("canners");
    if (written.isEmpty()) {
      return canners;
    }
    if (!(written.get() instanceof Written.Items list)) {
      fields.problem("canners", "takes a list", "begin each canner with - name:");
      return canners;
    }
    for (Written item : list.items()) {
      if (problems.isFull()) {
        break;
      }
      if (item instanceof Written.Keys keys) {
        Optional<Canner> canner = new CannerReader(keys, words, problems).read();
        canner.ifPresent(c -> add(canners, c, keys));
      } else {
        problems.add(item.place(), "a canner has keys", "write - name: and below it method:");
      }
    }
    return canners;
  }

  private void add(List<Canner> canners, Canner canner, Written.Keys keys) {
    if (canners.stream().anyMatch(c -> c.name().equals(canner.name()))) {
      problems.add(
          keys.place(),
          "two canners are called \"" + canner.name() + "\"",
          "give each a name of its own");
    } else {
      canners.add(canner);
    }
  }

  private Length offset(String key) {
    Length none = Length.millimetres(0);
    Length offset = fields.amount(key, Length::parse, "-1.5 mm").orElse(none);
    Length size =
        offset.amount().signum() < 0
            ? new Length(Fraction.ZERO.minus(offset.amount()), offset.unit())
            : offset;
    if (size.compareTo(MOST_OFFSET) > 0) {
      fields.problem(
          key, offset + " is more than any printer needs", "write " + MOST_OFFSET + " or less");
      return none;
    }
    return offset;
  }

  private Fraction scale() {
    Fraction scale =
        fields.amount("sheet-scale", KitchenReader::percent, "99.5 %").orElse(Fraction.ONE);
    Fraction stretch = scale.minus(Fraction.ONE);
    Fraction size = stretch.signum() < 0 ? Fraction.ZERO.minus(stretch) : stretch;
    if (size.compareTo(Fraction.of(Registration.MOST_STRETCH, 100)) > 0) {
      fields.problem(
          "sheet-scale",
          "no printer is so far out",
          "measure again; from "
              + (100 - Registration.MOST_STRETCH)
              + " % to "
              + (100 + Registration.MOST_STRETCH)
              + " % can be");
      return Fraction.ONE;
    }
    return scale;
  }

  private static Fraction percent(String text) {
    String number = text.strip();
    if (!number.endsWith("%")) {
      throw new IllegalArgumentException("\"" + Fields.shown(text) + "\" is no share of 100 %");
    }
    return Fraction.parse(number.substring(0, number.length() - 1).strip())
        .dividedBy(Fraction.of(100));
  }

  private Optional<String> link() {
    Optional<String> link = fields.text("link");
    if (link.isPresent() && !link.get().matches(LINK)) {
      fields.problem(
          "link",
          "\"" + Fields.shown(link.get()) + "\" is not the address of a server alone",
          "write it like http://pantry.lan:8080");
      return Optional.empty();
    }
    return link;
  }

  private int months() {
    int months = fields.count("months-to-use-by", 1, UseBy.MOST_MONTHS).orElse(UseBy.USUAL_MONTHS);
    Optional<String> reason = fields.text("use-by-note");
    if (months > UseBy.USUAL_MONTHS && reason.isEmpty()) {
      fields.problem(
          "months-to-use-by",
          "home-canned food keeps best for " + UseBy.USUAL_MONTHS + " months",
          "write " + UseBy.USUAL_MONTHS + " or fewer, or add use-by-note: with your reason");
    }
    return months;
  }

  private List<Volume> pots() {
    List<Volume> pots = fields.list("pots", Volume::parse, "12 quart");
    for (Volume pot : pots) {
      if (pot.compareTo(SMALLEST_POT) < 0 || pot.compareTo(LARGEST_POT) > 0) {
        fields.problem(
            "pots", pot + " is no size of a cooking pot", "check number and unit, as in 12 quart");
      }
    }
    return pots;
  }

  private List<OwnTime> times() {
    List<OwnTime> times = new ArrayList<>();
    Optional<Written> written = fields.written(TIMES);
    if (written.isPresent() && !(written.get() instanceof Written.Items)) {
      fields.problem(TIMES, "takes a list", "begin each time with - task:");
    }
    if (written.isPresent() && written.get() instanceof Written.Items list) {
      for (Written item : list.items()) {
        if (item instanceof Written.Keys keys) {
          new OwnTimeReader(keys, problems).read().ifPresent(times::add);
        } else {
          problems.add(item.place(), "a time has keys", "write - task: and below it minutes:");
        }
      }
    }
    return times;
  }

  private Optional<ZoneId> zone() {
    return fields
        .text("zone")
        .flatMap(
            name -> {
              try {
                return Optional.of(ZoneId.of(name));
              } catch (DateTimeException e) {
                fields.problem(
                    "zone",
                    "there is no time zone \"" + Fields.shown(name) + "\"",
                    "write it like America/Denver or Europe/Vienna");
                return Optional.empty();
              }
            });
  }
}
