package jarwright.files;

import jarwright.plan.Canner;
import jarwright.plan.Energy;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.quantity.Fraction;
import jarwright.quantity.GaugePressure;
import jarwright.quantity.Length;
import jarwright.quantity.Power;
import jarwright.quantity.Rounding;
import jarwright.water.LeastCanner;
import jarwright.water.Places;
import java.io.IOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads one canner of a kitchen. */
final class CannerReader {
  private static final String GAUGE_TESTED = "gauge-tested";
  static final List<String> KEYS =
      List.of(
          "name",
          "method",
          "inside-diameter",
          "inside-height",
          "rack-height",
          "power",
          "energy",
          "holds",
          "pressures",
          GAUGE_TESTED);
  private static final int MOST_PLACES = 60;
  private static final Length WIDEST = Length.millimetres(1_000);
  private static final Fraction LEAST_WATTS = Fraction.of(100);
  private static final Fraction MOST_WATTS = Fraction.of(30_000);

  private final Fields fields;
  private final PlanWords words;
  private final Problems problems;

  CannerReader(Written.Keys written, PlanWords words, Problems problems) {
    this.fields = new Fields(written, "a canner", KEYS, Map.of(), problems);
    this.words = words;
    this.problems = problems;
  }

  /** The canner, or none where its name or method is not understood. */
  Optional<Canner> read() throws IOException, Refused {
    fields.require("name", "give each canner a name that batches can use");
    fields.require("method", "write method: " + String.join(" or ", Method.ids()));
    Optional<String> name = CannerWord.read(fields, "name");
    Optional<Method> method = MethodWord.read(fields, "method", words);
    Optional<Length> diameter = length("inside-diameter", "33 cm");
    Optional<Length> height = length("inside-height", "30 cm");
    Optional<Length> rack = length("rack-height", "15 mm");
    if (rack.isPresent() && height.isPresent() && rack.get().compareTo(height.get()) >= 0) {
      fields.problem("rack-height", "the rack is as high as the canner", "measure both again");
    }
    OptionalInt watts = watts();
    Optional<Energy> energy = fields.word("energy", Energy::named, Energy.ids());
    Map<JarSize, Integer> holds = holds();
    List<GaugePressure> pressures = pressures(method);
    Optional<LocalDate> tested = gaugeTested(method);
    if (name.isEmpty() || method.isEmpty()) {
      return Optional.empty();
    }
    Canner canner =
        new Canner(
            name.get(),
            method.get(),
            diameter,
            height,
            rack,
            watts,
            energy,
            holds,
            pressures,
            tested);
    checkSize(canner);
    return Optional.of(canner);
  }

  private void checkSize(Canner canner) throws IOException, Refused {
    if (canner.method().isPressure()) {
      new LeastCanner(DayTables.rack()).fault(canner).ifPresent(f -> tellTooSmall(canner, f));
    }
  }

  private void tellTooSmall(Canner canner, LeastCanner.TooSmall fault) {
    boolean stated = fault.basis() == Places.Basis.STATED;
    String key = stated ? "holds" : fault.count() == 0 ? "inside-height" : "inside-diameter";
    fields.problem(
        fields.has(key) ? key : "inside-diameter",
        "\""
            + canner.name()
            + "\" is too small for pressure canning: "
            + (stated ? "it holds " : "by its measures it holds ")
            + fault.count()
            + " "
            + fault.jar()
            + (fault.count() == 1 ? " jar" : " jars")
            + ". A pressure canner must hold "
            + LeastCanner.QUARTS
            + " quart jars or more, whatever jars you fill, because a smaller one heats and cools"
            + " too fast for the tested times (AIB 539 Guide 1; NCHFP)",
        "use a larger pressure canner"
            + (fault.sure()
                ? ""
                : ", or where you have counted "
                    + LeastCanner.QUARTS
                    + " quarts upright under the lid, write holds: {quart: "
                    + LeastCanner.QUARTS
                    + "}"));
  }

  private Optional<Length> length(String key, String example) {
    Optional<Length> length = fields.amount(key, Length::parse, example);
    if (length.isPresent()
        && (length.get().inMillimetres().signum() <= 0 || length.get().compareTo(WIDEST) > 0)) {
      fields.problem(key, length.get() + " cannot be", "check number and unit, as in " + example);
      return Optional.empty();
    }
    return length;
  }

  private OptionalInt watts() {
    Optional<Fraction> watts =
        fields.amount("power", Power::parse, "2400 W, 2.4 kW or 9000 BTU/h").map(Power::inWatts);
    if (watts.isEmpty()) {
      return OptionalInt.empty();
    }
    if (watts.get().compareTo(LEAST_WATTS) < 0 || watts.get().compareTo(MOST_WATTS) > 0) {
      fields.problem("power", "no stove has that", "check number and unit, as in 2400 W");
      return OptionalInt.empty();
    }
    return OptionalInt.of(
        Rounding.NEAREST.toStep(watts.get(), Fraction.ONE).numerator().intValueExact());
  }

  private Map<JarSize, Integer> holds() throws IOException, Refused {
    Map<JarSize, Integer> holds = new LinkedHashMap<>();
    Optional<Written> written = fields.written("holds");
    if (written.isEmpty()) {
      return holds;
    }
    if (!(written.get() instanceof Written.Keys jars)) {
      fields.problem("holds", "takes jar sizes with their number", "write holds: {quart: 7}");
      return holds;
    }
    Map<String, Written.Entry> bySize = new LinkedHashMap<>();
    for (Map.Entry<String, Written.Entry> one : jars.entries().entrySet()) {
      Written.Entry entry = one.getValue();
      Optional<JarSize> size = new JarWord(words).read(keyAsValue(one.getKey(), entry), "holds");
      if (size.isPresent() && bySize.putIfAbsent(size.get().id(), entry) != null) {
        problems.add(entry.place(), "holds: names " + size.get() + " twice", "keep one of them");
      }
    }
    Written.Keys known = new Written.Keys(jars.place(), bySize);
    Fields counts = new Fields(known, "holds", JarSize.ids(), Map.of(), problems);
    for (JarSize jar : JarSize.values()) {
      counts.count(jar.id(), 1, MOST_PLACES).ifPresent(n -> holds.put(jar, n));
    }
    return holds;
  }

  /** The name of a jar, to be read as the value of a batch's jar is. */
  private Fields keyAsValue(String jar, Written.Entry entry) {
    Written.Text text = new Written.Text(entry.place(), jar, false);
    Written.Keys one =
        new Written.Keys(entry.place(), Map.of("holds", new Written.Entry(entry.place(), text)));
    return new Fields(one, "holds", List.of("holds"), Map.of(), problems);
  }

  private List<GaugePressure> pressures(Optional<Method> method) {
    if (method.isPresent() && method.get() != Method.WEIGHTED_GAUGE && fields.has("pressures")) {
      fields.problem("pressures", "only a weighted gauge has fixed pressures", "leave it out");
    }
    return fields.list("pressures", GaugePressure::parse, "10 psi");
  }

  private Optional<LocalDate> gaugeTested(Optional<Method> method) {
    if (method.isPresent() && method.get() != Method.DIAL_GAUGE && fields.has(GAUGE_TESTED)) {
      fields.problem(GAUGE_TESTED, "only a dial gauge is tested", "leave it out");
    }
    return ClockWord.date(fields, GAUGE_TESTED);
  }
}
