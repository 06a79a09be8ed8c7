package jarwright.cli;

import jarwright.files.KeyedOutcome;
import jarwright.files.UnfinishedSeal;
import jarwright.lot.LotCode;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.LoadReport;
import jarwright.pantry.LoadRun;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.pantry.Sealed;
import jarwright.problem.Place;
import jarwright.problem.Refused;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Asks at a terminal load by load, and records each when its questions are answered. An answer is
 * kept as soon as it is given: whoever stops half-way goes on from there.
 */
final class SealDialog {
  private final Call call;
  private final Books books;
  private final Keyboard keyboard;
  private final LotCode code;
  private final SealRecording recording;
  private final UnfinishedSeal unfinished;

  SealDialog(Call call, Books books, Keyboard keyboard, LotCode code) throws IOException, Refused {
    this.call = call;
    this.books = books;
    this.keyboard = keyboard;
    this.code = code;
    this.recording = new SealRecording(books);
    this.unfinished = new UnfinishedSeal(call.pantry(), code);
  }

  void run() throws IOException, Refused {
    int loads = lot().planned().orElseThrow().loads().size();
    boolean said = false;
    for (int load = 1; load <= loads; load++) {
      said |= load(load, loads);
    }
    if (!said) {
      throw new Refused(new RecordedLoads(books.events(), code).all());
    }
  }

  private Lot lot() throws IOException, Refused {
    return Books.lot(books.pantry(), code);
  }

  /** Whether there was anything to say of it. */
  private boolean load(int load, int loads) throws IOException, Refused {
    Lot lot = lot();
    Optional<LoadRun> run = lot.load(load);
    JarNumbers cooling = lot.cooling(load);
    if (run.isEmpty() && !lot.inLoad(load).isEmpty()) {
      String which = "Load " + load + " of " + loads + ", jars " + lot.inLoad(load);
      if (loads == 1 || keyboard.confirm(which + ": has it been processed, or not been needed?")) {
        process(lot, load);
      }
      return true;
    }
    if (cooling.isEmpty()) {
      return false;
    }
    Optional<OffsetDateTime> from = run.flatMap(LoadRun::lookFrom);
    if (from.filter(books.now()::isBefore).isPresent()) {
      keyboard.say(
          "Load "
              + load
              + ", jars "
              + cooling
              + ": cooling. Test their seals from "
              + VerdictText.minute(from.get())
              + " on, and then answer here.");
      return true;
    }
    keyboard.say("Load " + load + ": test the seals of jars " + cooling + ".");
    SealQuestions questions = new SealQuestions(keyboard, unfinished, lot, load);
    questions.seals();
    finish(questions);
    return true;
  }

  private void process(Lot lot, int load) throws IOException, Refused {
    SealQuestions questions = new SealQuestions(keyboard, unfinished, lot, load);
    if (questions.process()) {
      Pantry pantry = books.pantry();
      List<LoadReport> reports = read(questions.cells(), pantry);
      if (recording.judged(reports, pantry).canBeLookedAt(books.now())) {
        questions.seals();
      }
    }
    finish(questions);
  }

  private List<LoadReport> read(Map<String, String> cells, Pantry pantry) throws Refused {
    return KeyedOutcome.read("seal " + code, List.of(cells), pantry, books.zone());
  }

  private void finish(SealQuestions questions) throws IOException, Refused {
    Pantry pantry = books.pantry();
    List<LoadReport> reports = read(questions.cells(), pantry);
    Sealed sealed = recording.judged(reports, pantry);
    JarNumbers late = sealed.late(code);
    if (!late.isEmpty() && questions.putAway(late)) {
      reports = read(questions.cells(), pantry);
      sealed = recording.judged(reports, pantry);
    }
    call.out().print(recording.text(sealed));
    if (!keyboard.confirm("Save this?")) {
      throw new Refused(
          Place.wholeFile("seal"),
          "nothing was recorded",
          "your answers are kept: jarwright seal " + code + " offers them again");
    }
    List<LedgerEvent> events = recording.record(reports, sealed);
    questions.done();
    call.out().println(Help.CAUTION);
    call.tell(Events.recorded(events));
  }
}
