package jarwright.cli;

import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;

/** The options that every command has. */
final class CommonOptions {
  static final String HELP = "help";
  static final String PANTRY = "pantry";
  static final String QUIET = "quiet";
  static final String VERBOSE = "verbose";

  private CommonOptions() {}

  /** The command's own options and the common ones. */
  static Options with(Options own) {
    Options all = new Options();
    own.getOptions().forEach(all::addOption);
    all.addOption(
        Option.builder()
            .longOpt(PANTRY)
            .hasArg()
            .argName("DIR")
            .desc("the household folder")
            .get());
    all.addOption(Option.builder("q").longOpt(QUIET).desc("say nothing but problems").get());
    all.addOption(
        Option.builder("v").longOpt(VERBOSE).desc("show the program's own faults whole").get());
    all.addOption(Option.builder("h").longOpt(HELP).desc("show this help").get());
    return all;
  }

  static Option withValue(String shortName, String longName, String argument, String description) {
    return Option.builder(shortName)
        .longOpt(longName)
        .hasArg()
        .argName(argument)
        .desc(description)
        .get();
  }

  static Option flag(String longName, String description) {
    return Option.builder().longOpt(longName).desc(description).get();
  }
}
