package jarwright.cli;

import jarwright.files.SeenListing;
import jarwright.files.VerdictTable;
import jarwright.lot.JarId;
import jarwright.problem.Nearest;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import jarwright.render.PictureCodes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.commons.cli.Options;

/** Jars by their codes: read from pictures and PDF pages, or typed. */
final class ScanCommand implements Command {
  private static final String SHELF = "shelf";
  private static final String FORMAT = "format";
  private static final List<String> FORMATS = List.of("text", "csv", "json");
  private static final Pattern FILE_NAME = Pattern.compile(".*\\.[A-Za-z]{3,4}");
  private static final long MOST_BYTES = 200_000_000;

  @Override
  public String name() {
    return "scan";
  }

  @Override
  public String arguments() {
    return "FILE… or CODE…";
  }

  @Override
  public String summary() {
    return "the record of a jar whose code is in a picture, or is typed";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(
            CommonOptions.withValue(
                null, SHELF, "NAME", "the pictures show this shelf whole: tell what differs"))
        .addOption(
            CommonOptions.withValue(null, FORMAT, "FORMAT", "text; csv or json for a stock-take"))
        .addOption(CommonOptions.withValue(null, PlanRun.KITCHEN, "FILE", "the kitchen's file"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    if (call.arguments().isEmpty()) {
      throw new Usage(
          "scan needs a picture or a code, as in: jarwright scan shelf.jpg, or: scan 260824A-T/03");
    }
    String format = call.value(FORMAT).orElse(FORMATS.get(0));
    if (!FORMATS.contains(format)) {
      throw new Usage("--format " + format + ": " + Nearest.remedy(format, FORMATS));
    }
    List<SeenCode> codes = codes(call);
    if (!format.equals(FORMATS.get(0))) {
      list(call, codes, format);
      return;
    }
    Books books = Books.openOrBegin(call);
    FiledStock stock = new FiledStock(books.house(), books.events());
    ScanText text =
        new ScanText(
            stock,
            new RecordText(books.kitchen(), books.now()),
            new JarText(new VerdictText(Units.BOTH), VerdictTable.read(), books.now()),
            books.now());
    call.out().print(codes.size() == 1 ? text.one(codes.get(0)) : text.several(codes));
    if (call.value(SHELF).isPresent()) {
      call.out().print(text.compared(call.value(SHELF).get().strip(), codes));
    }
    call.out().println(Help.CAUTION);
  }

  /** The jars alone; what is no jar's code is told beside it. */
  private static void list(Call call, List<SeenCode> codes, String format) throws IOException {
    List<JarId> jars = codes.stream().flatMap(c -> c.jar().stream()).toList();
    codes.stream()
        .filter(c -> c.jar().isEmpty())
        .forEach(c -> call.tell("not a jar's code: " + NamedJars.shown(c.text())));
    String shelf = call.value(SHELF).orElse("").strip();
    call.out()
        .print(format.equals("csv") ? SeenListing.csv(jars, shelf) : SeenListing.json(jars, shelf));
  }

  /** Each code once, in the order in which they were found. */
  private static List<SeenCode> codes(Call call) throws IOException, Refused {
    Map<String, SeenCode> codes = new LinkedHashMap<>();
    Problems problems = new Problems();
    for (String argument : call.arguments()) {
      Path file = call.surroundings().resolve(argument);
      if (Files.isRegularFile(file)) {
        List<String> found = in(file, argument);
        found.forEach(t -> codes.putIfAbsent(t, SeenCode.read(t)));
        if (found.isEmpty()) {
          problems.add(
              Place.wholeFile(argument),
              "no code can be read in it",
              "go nearer, hold still, give it light, and keep the whole code with its white edge in"
                  + " the picture; or type the lot that stands beside it");
        }
      } else {
        typed(argument, codes, problems);
      }
    }
    problems.refuse();
    return List.copyOf(codes.values());
  }

  private static List<String> in(Path file, String argument) throws IOException {
    if (Files.size(file) > MOST_BYTES) {
      throw new IOException(argument + ": larger than 200 MB, which no picture of jars is");
    }
    try {
      return PictureCodes.of(Files.readAllBytes(file));
    } catch (IOException e) {
      throw new IOException(argument + ": " + e.getMessage() + "; save it as JPEG, PNG or PDF", e);
    }
  }

  private static void typed(String argument, Map<String, SeenCode> codes, Problems problems)
      throws NoSuchFileException {
    SeenCode code = SeenCode.typed(argument);
    if (code.isMistyped() && FILE_NAME.matcher(argument).matches()) {
      throw new NoSuchFileException(argument);
    }
    if (code.isMistyped()) {
      problems.add(
          Place.wholeFile(NamedJars.shown(argument)), code.fault(), "copy it from the label");
    } else {
      codes.putIfAbsent(code.text(), code);
    }
  }
}
