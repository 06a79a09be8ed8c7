package jarwright.cli;

import jarwright.files.KeyedOutcome;
import jarwright.files.UnfinishedSeal;
import jarwright.pantry.AcidNeed;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.LoadRun;
import jarwright.pantry.Lot;
import jarwright.pantry.Otherwise;
import jarwright.pantry.Required;
import jarwright.pantry.Ticked;
import jarwright.problem.Refused;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Asks what happened to a load, question by question, in the order of the checklist. */
final class SealQuestions {
  private static final String OR_UNSURE = "or ? if you are not sure)";
  private static final String TIME = "(like 10:05, " + OR_UNSURE;
  private static final String BOX = "(yes, no, " + OR_UNSURE;
  private static final String JARS = "(numbers like 3 5..7, or none)";
  private static final String DATE = "date";
  private static final String UNFILLED = "unfilled";
  private static final String KEPT = "kept";
  private static final String RESTARTS = "restarts";
  private static final String CLOUDY = "cloudy";
  private static final String OTHERWISE = "otherwise";
  private static final String NOTE = "note";
  private static final String LOWEST = "lowest-psi";
  private static final String UNSURE = "?";
  private static final String NONE = "none";

  private final Keyboard keyboard;
  private final UnfinishedSeal unfinished;
  private final Lot lot;
  private final int load;
  private final Required required;
  private final Map<String, String> cells = new LinkedHashMap<>();

  /**
   * @param unfinished keeps each answer as it is given, and those of an earlier time
   * @param load counted from 1
   */
  SealQuestions(Keyboard keyboard, UnfinishedSeal unfinished, Lot lot, int load)
      throws IOException, Refused {
    this.keyboard = keyboard;
    this.unfinished = unfinished;
    this.lot = lot;
    this.load = load;
    this.required = lot.planned().orElseThrow().required();
    resume();
    cells.put("lot", lot.code().toString());
    cells.put("load", String.valueOf(load));
  }

  private void resume() throws IOException, Refused {
    Map<String, String> before = unfinished.of(load);
    if (before.isEmpty()) {
      return;
    }
    String told =
        before.entrySet().stream()
            .map(e -> e.getKey() + " " + e.getValue())
            .collect(Collectors.joining(", "));
    keyboard.say("You answered before: " + told);
    if (keyboard.confirm("Go on from there?")) {
      cells.putAll(before);
    } else {
      unfinished.drop(load);
    }
  }

  /** A row of a day's file, as far as it has been answered. */
  Map<String, String> cells() {
    return Map.copyOf(cells);
  }

  /** The answers are in the ledger now. */
  void done() throws IOException, Refused {
    unfinished.drop(load);
  }

  /** How the load was processed; false where none of its jars was filled. */
  boolean process() throws IOException, Refused {
    LocalDate packed = lot.code().packed();
    keyboard.say("Load " + load + ": jars " + lot.inLoad(load) + ", packed " + packed);
    ask(UNFILLED, "Jars that were never filled? (numbers like 3 5..7, none, or all)");
    if (cells.get(UNFILLED).equals("all")) {
      return false;
    }
    maybe(DATE, "What day did you can it? (Enter = " + packed + ", or a day written like it)");
    boolean pressure = required.pressure().isPresent();
    acid();
    if (pressure) {
      ask("vented", "Did steam vent for the full time before you closed the vent? " + BOX);
    }
    if (required.asksForGaugeTest(day())) {
      ask("gauge-tested", "Was the dial gauge tested within a year before that day? " + BOX);
    }
    String heat = pressure ? "pressure" : "full boil";
    ask(
        "start",
        "What time did you start the timer, already at "
            + (pressure ? "" : "a ")
            + heat
            + "? "
            + TIME);
    String kept =
        restarted() ? "no" : ask(KEPT, "Did the " + heat + " hold from then to the end? " + BOX);
    if (Ticked.parse(kept) != Ticked.YES) {
      restarts(heat);
    }
    ask("end", "What time was it up? " + TIME);
    if (pressure) {
      ask(LOWEST, "Lowest pressure seen, in psi? (or ? if you are not sure)");
    }
    ask(CLOUDY, "Was the canner's water cloudy or colored afterward? (yes, no, or ? if not seen)");
    otherwise(o -> !o.isSign());
    maybe(NOTE, "Anything to note? (or just Enter)");
    return true;
  }

  private void acid() throws IOException, Refused {
    String some = " (numbers like 3 5..7, none, all, " + OR_UNSURE;
    if (required.acid() == AcidNeed.EACH_JAR) {
      ask("acid-missing", "Jars that did not get their acid?" + some);
    } else if (required.acid() == AcidNeed.IN_RECIPE) {
      ask("acid-missing", "Jars without the recipe's full vinegar, lemon or lime juice?" + some);
    }
  }

  private LocalDate day() {
    return Optional.ofNullable(cells.get(DATE))
        .map(LocalDate::parse)
        .orElseGet(() -> lot.code().packed());
  }

  private boolean restarted() {
    return cells.containsKey(RESTARTS) && !cells.get(RESTARTS).equals("0");
  }

  /** A restart makes it good only where nothing was lost after the last one. */
  private void restarts(String heat) throws IOException, Refused {
    String restarts =
        ask(RESTARTS, "How many times did you start the time over? (0 if you did not)");
    if (Integer.parseInt(restarts.strip()) == 0) {
      return;
    }
    if (!cells.containsKey("last-start")) {
      cells.remove(KEPT);
    }
    ask("last-start", "What time did you start it over the last time? " + TIME);
    ask(KEPT, "Did the " + heat + " hold from that start on? " + BOX);
  }

  /** How the jars came out, once they have cooled. */
  void seals() throws IOException, Refused {
    ask("unsealed", "Jars that did not seal? " + JARS);
    ask("some-lost", "Jars that lost some liquid, less than half? " + JARS);
    ask("half-lost", "Jars that lost half of it or more? " + JARS);
    Optional<LoadRun> recorded = lot.load(load);
    Ticked before = recorded.map(r -> r.seen().cloudy()).orElse(Ticked.BLANK);
    if (before == Ticked.BLANK) {
      if (UNSURE.equals(cells.get(CLOUDY))) {
        cells.remove(CLOUDY);
      }
      ask(CLOUDY, "Was the canner's water cloudy or colored? " + BOX);
    }
    if (recorded.isPresent()) {
      otherwise(o -> true);
      maybe(NOTE, "Anything to note on these jars? (or just Enter)");
    } else {
      signs();
    }
  }

  /** The one question for what is rare. */
  private void otherwise(Predicate<Otherwise> asked) throws IOException, Refused {
    keyboard.say("Anything otherwise than the sheet says?");
    words(asked).forEach(o -> keyboard.say("  " + o.word() + ": " + meaning(o)));
    ask(OTHERWISE, "(none, or words, with the jars they are said of: larger-jar 3, recipe)");
  }

  /** What is seen on jars goes with what was said of the load. */
  private void signs() throws IOException, Refused {
    String said = cells.getOrDefault(OTHERWISE, NONE);
    keyboard.say("Anything bad seen on the jars?");
    words(Otherwise::isSign).forEach(o -> keyboard.say("  " + o.word() + ": " + meaning(o)));
    String signs =
        keyboard.ask("(none, or words with jars, as: bulges 3, leaks 5)", a -> fault(OTHERWISE, a));
    put(OTHERWISE, joined(said, signs));
  }

  private static String joined(String said, String signs) {
    if (said.equals(NONE) || said.equals(signs)) {
      return signs;
    }
    return signs.equals(NONE) ? said : said + ", " + signs;
  }

  private List<Otherwise> words(Predicate<Otherwise> asked) {
    return Arrays.stream(Otherwise.values())
        .filter(asked)
        .filter(o -> o.isPossible(required))
        .toList();
  }

  static String meaning(Otherwise what) {
    return switch (what) {
      case FORCED_COOLING -> "cooled with water, or opened before the pressure was at zero";
      case UNCOVERED -> "the water fell below the jar lids";
      case LARGER_JAR -> "a jar larger than the sheet's";
      case OTHER_PACK -> "packed raw instead of hot, or hot instead of raw";
      case RECIPE -> "less of what the recipe marks, other or more vegetables, or a thickener";
      case LEAKS -> "food or liquid has leaked out";
      case BULGES -> "the lid is swollen outward, not merely up";
      case SPURTS -> "bubbles rise, or liquid or foam spurts out";
      case SMELL -> "a bad smell";
      case MOLD -> "mold";
      case COLOR -> "an odd color, or cloudy liquid";
    };
  }

  /**
   * Whether any of those whose time is over were cold in time.
   *
   * @param late jars that are otherwise to be thrown away
   */
  boolean putAway(JarNumbers late) throws IOException, Refused {
    keyboard.say("The time in which jars " + late + " could be saved at room temperature is over.");
    String cold = ask("in-refrigerator", "Jars that went into the refrigerator before? " + JARS);
    String frozen = ask("in-freezer", "Jars that went into the freezer before? " + JARS);
    if (JarNumbers.parse(cold).plus(JarNumbers.parse(frozen)).isEmpty()) {
      return false;
    }
    ask("since", "When were they put there? (like " + lot.code().packed() + " 22:30)");
    return true;
  }

  private String ask(String column, String question) throws IOException, Refused {
    if (cells.containsKey(column)) {
      return cells.get(column);
    }
    String answer = keyboard.ask(question, a -> fault(column, a));
    put(column, answer);
    return answer;
  }

  private void put(String column, String answer) throws IOException, Refused {
    cells.put(column, answer);
    unfinished.keep(load, cells);
  }

  private static Optional<String> fault(String column, String answer) {
    if (answer.isEmpty()) {
      return Optional.of("Please type an answer.");
    }
    if (column.equals(LOWEST) && answer.equals(UNSURE)) {
      return Optional.empty();
    }
    return KeyedOutcome.fault(column, answer).map(p -> p.what() + "; " + p.remedy());
  }

  private void maybe(String column, String question) throws IOException, Refused {
    if (cells.containsKey(column)) {
      return;
    }
    String answer = keyboard.ask(question, a -> a.isEmpty() ? Optional.empty() : fault(column, a));
    if (!answer.isEmpty()) {
      put(column, answer);
    }
  }
}
