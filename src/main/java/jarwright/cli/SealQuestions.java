package jarwright.cli;

import jarwright.files.KeyedOutcome;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.Lot;
import jarwright.pantry.Planned;
import jarwright.pantry.Ticked;
import jarwright.problem.Refused;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Asks what happened to a load, question by question, in the order of the checklist. */
final class SealQuestions {
  private static final String TIME = "(like 10:05, or ? if nobody knows)";
  private static final String BOX = "(yes, no, or ? if nobody knows)";
  private static final String JARS = "(numbers like 3 5..7, or none)";

  private final Keyboard keyboard;
  private final Lot lot;
  private final Planned planned;
  private final Map<String, String> cells = new LinkedHashMap<>();

  SealQuestions(Keyboard keyboard, Lot lot, Planned planned) {
    this.keyboard = keyboard;
    this.lot = lot;
    this.planned = planned;
  }

  /**
   * A row of a day's file.
   *
   * @param load counted from 1
   */
  Map<String, String> of(int load) throws IOException, Refused {
    cells.clear();
    cells.put("lot", lot.code().toString());
    cells.put("load", String.valueOf(load));
    JarNumbers jars = planned.inLoad(load);
    keyboard.say(
        "Load "
            + load
            + " of "
            + planned.loads().size()
            + ": jars "
            + jars
            + ", packed "
            + lot.code().packed());
    maybe(
        "date",
        "On which day was it canned? (just Enter for "
            + lot.code().packed()
            + ", or another written so)");
    ask("unfilled", "Which of them were never filled? " + JARS);
    process();
    ask("unsealed", "Jars that did not seal? " + JARS);
    ask("some-lost", "Jars that lost some liquid, less than half? " + JARS);
    ask("half-lost", "Jars that lost half of it or more? " + JARS);
    maybe("note", "Anything else? (a note, or just Enter)");
    return Map.copyOf(cells);
  }

  private void process() throws IOException, Refused {
    boolean pressure = planned.required().pressure().isPresent();
    if (planned.required().acid()) {
      ask("acid-in-every-jar", "Did every jar get its acid? " + BOX);
    }
    if (pressure) {
      ask("vented", "Was the canner vented for its full time? " + BOX);
    }
    String heat = pressure ? "pressure" : "full boil";
    ask("start", "When was the clock started, at " + (pressure ? "" : "a ") + heat + "? " + TIME);
    String kept = ask("kept", "Did the " + heat + " hold from then to the end? " + BOX);
    if (Ticked.parse(kept) != Ticked.YES) {
      restarts(heat);
    }
    ask("end", "When did the time end? " + TIME);
    if (pressure) {
      String lowest = ask("lowest-psi", "Lowest pressure seen, in psi? (or ? if nobody knows)");
      if (lowest.equals("?")) {
        cells.remove("lowest-psi");
      }
    }
    ask("cloudy", "Was the canner's water cloudy or coloured afterwards? " + BOX);
  }

  /** A restart makes it good only where nothing was lost after the last one. */
  private void restarts(String heat) throws IOException, Refused {
    String restarts = ask("restarts", "How often was the whole time started again? (0, 1 …)");
    if (Integer.parseInt(restarts.strip()) == 0) {
      return;
    }
    ask("last-start", "When was it started the last time? " + TIME);
    ask("kept", "Did the " + heat + " hold from that start on? " + BOX);
  }

  private String ask(String column, String question) throws IOException, Refused {
    String answer = keyboard.ask(question, a -> fault(column, a));
    cells.put(column, answer);
    return answer;
  }

  private static Optional<String> fault(String column, String answer) {
    if (answer.isEmpty()) {
      return Optional.of("silence is no answer here");
    }
    if (column.equals("lowest-psi") && answer.equals("?")) {
      return Optional.empty();
    }
    return KeyedOutcome.fault(column, answer).map(p -> p.what() + "; " + p.remedy());
  }

  private void maybe(String column, String question) throws IOException, Refused {
    String answer = keyboard.ask(question, a -> a.isEmpty() ? Optional.empty() : fault(column, a));
    if (!answer.isEmpty()) {
      cells.put(column, answer);
    }
  }
}
