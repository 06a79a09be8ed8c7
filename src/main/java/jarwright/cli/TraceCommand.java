package jarwright.cli;

import jarwright.files.FoodTables;
import jarwright.files.JarListing;
import jarwright.pantry.Jar;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Pantry;
import jarwright.pantry.Sign;
import jarwright.pantry.Sought;
import jarwright.problem.Nearest;
import jarwright.problem.Place;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.cli.Options;

/** Where jars are or went, and what is recorded of them; and what to do when one was spoiled. */
final class TraceCommand implements Command {
  private static final String FROM = "from";
  private static final String LIDS = "lids";
  private static final String DAY = "day";
  private static final String SHELF = "shelf";
  private static final String FORMAT = "format";
  private static final String SPOILED = "spoiled";
  private static final String CAUSE = "cause";
  private static final String LOOKED = Looks.LOOKED;
  private static final List<String> FORMATS = List.of("text", "csv", "json");

  @Override
  public String name() {
    return "trace";
  }

  @Override
  public String arguments() {
    return "LOT… or JAR… or --from TEXT";
  }

  @Override
  public String summary() {
    return "where the jars of a lot, a source, a day are or went";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.withValue(null, FROM, "TEXT", "where the produce came from"))
        .addOption(CommonOptions.withValue(null, LIDS, "TEXT", "the lids used"))
        .addOption(CommonOptions.withValue(null, DAY, "DATE", "of packing, as 2026-08-24"))
        .addOption(CommonOptions.withValue(null, SHELF, "TEXT", "where they stand"))
        .addOption(
            CommonOptions.withValue(
                null, SPOILED, "WHAT", "this jar was spoiled: signs as leaks,mold, or in words"))
        .addOption(
            CommonOptions.withValue(
                null, CAUSE, "TEXT", "with --spoiled: what was wrong with the whole lot"))
        .addOption(Looks.option())
        .addOption(VouchedLots.byOption())
        .addOption(VouchedLots.sourceOption())
        .addOption(VouchedLots.acidOption())
        .addOption(CommonOptions.withValue(null, FORMAT, "FORMAT", String.join(", ", FORMATS)))
        .addOption(Books.byOption())
        .addOption(CommonOptions.withValue(null, PlanRun.KITCHEN, "FILE", "the kitchen's file"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    String format = call.value(FORMAT).orElse(FORMATS.get(0));
    if (!FORMATS.contains(format)) {
      throw new Usage("--format " + format + ": " + Nearest.remedy(format, FORMATS));
    }
    NamedJars named = NamedJars.of(call.arguments().stream().map(TraceCommand::whole).toList());
    Sought sought = sought(call);
    checkUse(call, named, sought);
    Books books = Books.open(call);
    if (call.has(SPOILED)) {
      new SpoiledJars(call, books, named)
          .record(SpoiledJars.told(call.text(SPOILED), call.text(CAUSE)));
      return;
    }
    Optional<Set<Sign>> looked = Looks.of(call, LOOKED, new VerdictText(Units.BOTH).wording());
    if (looked.isPresent()) {
      new SpoiledJars(call, books, named).lookedAt(looked.get());
    }
    if (call.has(VouchedLots.BY)) {
      new VouchedLots(call, books).record(named);
    }
    List<LedgerEvent> events = books.events();
    Pantry pantry = Pantry.of(events, FoodTables::own);
    List<Jar> jars = jars(pantry, named, sought);
    switch (format) {
      case "csv" -> call.out().print(JarListing.csv(jars, books.now()));
      case "json" -> call.out().print(JarListing.json(jars, books.now()));
      default -> {
        boolean history = !named.codes().isEmpty();
        call.out().print(new TraceText(books, pantry, history ? events : List.of()).of(jars));
        call.out().println(Help.CAUTION);
      }
    }
  }

  /** A lot alone means all its jars. */
  private static String whole(String argument) {
    return argument.matches("[0-9][^/]*") ? argument.strip() + "/all" : argument;
  }

  private static Sought sought(Call call) throws Usage {
    Optional<LocalDate> day = Optional.empty();
    if (call.has(DAY)) {
      String typed = call.value(DAY).orElse("");
      try {
        day = Optional.of(LocalDate.parse(typed));
      } catch (DateTimeException e) {
        throw new Usage("--day takes a date like 2026-08-24, not " + NamedJars.shown(typed));
      }
    }
    return new Sought(call.value(FROM), call.value(LIDS), day, call.value(SHELF));
  }

  private static void checkUse(Call call, NamedJars named, Sought sought) throws Usage {
    if (!named.words().isEmpty()) {
      throw new Usage(
          "trace takes lots and jars, not "
              + NamedJars.shown(named.words())
              + "; --from, --lids, --day or --shelf look for others");
    }
    if (named.isEmpty() == sought.isEmpty()) {
      throw new Usage(
          "trace needs a lot or a jar, as in: jarwright trace 260824A-T; or one or more of --from,"
              + " --lids, --day and --shelf");
    }
    List<String> writing = Stream.of(SPOILED, LOOKED, VouchedLots.BY).filter(call::has).toList();
    if (!writing.isEmpty() && (named.isEmpty() || call.has(FORMAT) || writing.size() > 1)) {
      throw new Usage(
          "--spoiled, --looked-at and --vouched-by record something of jars named by their codes,"
              + " one of them at a time");
    }
    if (call.has(CAUSE) && !call.has(SPOILED)) {
      throw new Usage("--cause goes with --spoiled");
    }
    VouchedLots.of(call);
    for (String option : List.of(SPOILED, CAUSE, LOOKED, FROM, LIDS, SHELF)) {
      if (call.value(option).filter(String::isBlank).isPresent()) {
        throw new Usage("--" + option + " needs words, not an empty text");
      }
    }
  }

  private static List<Jar> jars(Pantry pantry, NamedJars named, Sought sought) throws Refused {
    if (!named.isEmpty()) {
      return named.in(pantry, j -> true);
    }
    List<Jar> jars = pantry.jars().filter(sought::fits).toList();
    if (jars.isEmpty()) {
      throw new Refused(
          Place.wholeFile("trace"), "no jar of the ledger fits that", known(pantry, sought));
    }
    return jars;
  }

  private static String known(Pantry pantry, Sought sought) {
    Set<String> known = new LinkedHashSet<>();
    pantry
        .lots()
        .forEach(
            l -> {
              sought.from().ifPresent(t -> known.add(l.facts().from()));
              sought.lids().ifPresent(t -> known.add(l.facts().lids()));
              sought.shelf().ifPresent(t -> known.add(l.facts().shelf()));
              sought
                  .day()
                  .ifPresent(t -> l.facts().packed().ifPresent(d -> known.add(d.toString())));
            });
    known.remove("");
    return known.isEmpty()
        ? "none of that kind was ever recorded"
        : "recorded: " + String.join(", ", known.stream().limit(12).toList());
  }
}
