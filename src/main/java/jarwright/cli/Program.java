package jarwright.cli;

import jarwright.page.PrintFault;
import jarwright.problem.Nearest;
import jarwright.problem.Refused;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.ParseException;

/** Finds the command, runs it, and words what went wrong. */
final class Program {
  private static final String NAME = "jarwright";

  /** What Java puts for each byte of a word that the locale's character set does not have. */
  private static final char LOST = '\uFFFD';

  private static final String NO_NAME =
      "a file cannot have this name on this system; give it a plain one, or set a UTF-8 locale";
  private static final String LOST_LETTERS =
      "some letters of this command were lost on the way in, since the locale has none but plain ones;"
          + " set a UTF-8 locale, as in LC_ALL=C.UTF-8";
  private static final String NO_MEMORY =
      "this takes more memory than the program may use; try smaller plans one by one, or more memory"
          + " with JARWRIGHT_JAVA_OPTS=-Xmx2g";

  private final Surroundings surroundings;

  Program(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  /** The exit status. */
  int run(String... args) {
    return exit(args).status();
  }

  /** The same, which has not been done where its output could not be written. */
  int run(String[] args, Outlet output) {
    Exit exit = exit(args);
    surroundings.out().flush();
    Optional<String> fault = output.fault();
    fault.ifPresent(why -> say("not all of the output could be written: " + why));
    return (exit == Exit.DONE && fault.isPresent() ? Exit.FILE : exit).status();
  }

  private Exit exit(String... args) {
    if (Stream.of(args).anyMatch(a -> a.indexOf(LOST) >= 0)) {
      say(LOST_LETTERS);
      return Exit.USAGE;
    }
    if (args.length == 0) {
      surroundings.err().print(Help.overview());
      return Exit.USAGE;
    }
    if (List.of("--help", "-h", "help").contains(args[0])) {
      surroundings.out().print(Help.overview());
      return Exit.DONE;
    }
    if (args[0].equals("--version")) {
      surroundings.out().println(NAME + " " + Help.version());
      return Exit.DONE;
    }
    Optional<Command> command = Commands.named(args[0]);
    if (command.isEmpty()) {
      say("there is no command \"" + args[0] + "\"; " + Nearest.remedy(args[0], Commands.names()));
      return Exit.USAGE;
    }
    return run(command.get(), Arrays.copyOfRange(args, 1, args.length));
  }

  private Exit run(Command command, String... args) {
    boolean verbose = List.of(args).contains("--verbose") || List.of(args).contains("-v");
    try {
      CommandLine line = new DefaultParser().parse(CommonOptions.with(command.options()), args);
      if (line.hasOption(CommonOptions.HELP)) {
        surroundings.out().print(Help.of(command));
        return Exit.DONE;
      }
      command.run(new Call(surroundings, line));
      return Exit.DONE;
    } catch (ParseException e) {
      say(e.getMessage() + "; try " + NAME + " " + command.name() + " --help");
      return Exit.USAGE;
    } catch (Usage e) {
      say(e.getMessage());
      return Exit.USAGE;
    } catch (Refused e) {
      e.problems().forEach(p -> surroundings.err().println(plain(p.text())));
      return Exit.REFUSED;
    } catch (PrintFault e) {
      return fault(e.getMessage(), Exit.REFUSED, e, verbose);
    } catch (InvalidPathException e) {
      return fault(e.getInput() + ": " + NO_NAME, Exit.FILE, e, verbose);
    } catch (UncheckedIOException e) {
      return fault(worded(e.getCause()), Exit.FILE, e, verbose);
    } catch (IOException e) {
      return fault(worded(e), Exit.FILE, e, verbose);
    } catch (StackOverflowError e) {
      return fault("the input is nested too deeply to be read", Exit.REFUSED, e, verbose);
    } catch (OutOfMemoryError e) {
      return fault(NO_MEMORY, Exit.REFUSED, e, verbose);
    } catch (RuntimeException e) {
      String own = "this is a fault of the program, not of your input: " + e.getMessage();
      return fault(own + " (--verbose shows where)", Exit.REFUSED, e, verbose);
    }
  }

  private Exit fault(String message, Exit exit, Throwable cause, boolean verbose) {
    say(message);
    if (verbose) {
      PrintStream err = surroundings.err();
      cause.printStackTrace(err);
    }
    return exit;
  }

  private void say(String message) {
    surroundings.err().println(NAME + ": " + plain(message));
  }

  /** What came in may hold characters that a terminal takes for orders. */
  static String plain(String message) {
    return message.replaceAll("[\\p{Cntrl}&&[^\\n]]+", " ");
  }

  /** What a file system says in its own short way, as a sentence. */
  private static String worded(IOException e) {
    if (e instanceof NoSuchFileException missing) {
      return missing.getFile() + ": there is no such file or folder";
    }
    if (e instanceof AccessDeniedException denied) {
      return denied.getFile() + ": not allowed to read or write here";
    }
    if (e instanceof FileSystemException system && system.getReason() != null) {
      return system.getFile() + ": " + system.getReason();
    }
    return e.getMessage() == null ? e.toString() : e.getMessage();
  }
}
