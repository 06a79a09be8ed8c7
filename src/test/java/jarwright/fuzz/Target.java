package jarwright.fuzz;

import jarwright.cli.FuzzedCommands;
import jarwright.files.FuzzedFiles;
import jarwright.lot.FuzzedCodes;
import jarwright.render.FuzzedTemplates;
import jarwright.web.FuzzedRequests;
import java.util.Locale;

/**
 * A door through which text of other people's making comes in. Whatever comes, it is read or
 * refused: anything thrown here is a finding.
 */
public enum Target {
  PLAN_YAML(FuzzedCommands::yamlPlan),
  PLAN_CSV(FuzzedCommands::csvPlan),
  KITCHEN(FuzzedCommands::kitchen),
  KIT_WORDS(FuzzedCommands::words),
  COMMAND_LINE(FuzzedCommands::commandLine),
  TABLES(FuzzedFiles::tables),
  LABEL_STOCKS(FuzzedFiles::labelStocks),
  LEDGER(FuzzedFiles::ledger),
  LEDGER_LINES(FuzzedFiles::ledgerLines),
  BATCH_RECORD(FuzzedFiles::batchRecord),
  OUTCOME(FuzzedFiles::outcome),
  CODES(FuzzedCodes::codes),
  TEMPLATE(FuzzedTemplates::template),
  MARKUP(FuzzedTemplates::markup),
  REQUEST(FuzzedRequests::request);

  private final Reading reading;

  /** Reads one input. */
  @FunctionalInterface
  interface Reading {
    void read(byte[] input) throws Exception;
  }

  Target(Reading reading) {
    this.reading = reading;
  }

  /** As files and commands name it: {@code plan-yaml}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static Target named(String id) {
    return valueOf(id.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  void read(byte[] input) throws Exception {
    reading.read(input);
  }
}
