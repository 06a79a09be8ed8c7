package jarwright.cli;

import java.util.Locale;
import org.apache.commons.cli.Option;

/** Help texts, made from what the commands say of themselves. */
final class Help {
  /** Stands below every figure that the program shows. */
  static final String CAUTION =
      "Follow the current tested guide and your local extension service or health authority.";

  private Help() {}

  static String overview() {
    StringBuilder out = new StringBuilder();
    out.append("jarwright turns a canning plan into checklists, labels, sheets and records.\n\n");
    for (Command command : Commands.all()) {
      out.append(
          String.format(Locale.ROOT, "  jarwright %-8s %s%n", command.name(), command.summary()));
    }
    out.append("\nEach command has --help. ").append(CAUTION).append('\n');
    return out.toString();
  }

  static String of(Command command) {
    StringBuilder out = new StringBuilder();
    out.append("jarwright ").append(command.name()).append(' ').append(command.arguments());
    out.append("\n\n").append(command.summary()).append(".\n\n");
    for (Option option : CommonOptions.with(command.options()).getOptions()) {
      out.append(
          String.format(Locale.ROOT, "  %-28s %s%n", spelled(option), option.getDescription()));
    }
    return out.append('\n').append(CAUTION).append('\n').toString();
  }

  private static String spelled(Option option) {
    String shortName = option.getOpt() == null ? "" : "-" + option.getOpt() + ", ";
    String argument = option.hasArg() ? " " + option.getArgName() : "";
    return shortName + "--" + option.getLongOpt() + argument;
  }

  static String version() {
    String version = Main.class.getPackage().getImplementationVersion();
    return version == null ? "(not packaged)" : version;
  }
}
