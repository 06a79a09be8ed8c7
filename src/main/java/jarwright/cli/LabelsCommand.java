package jarwright.cli;

import jarwright.label.JarLabel;
import jarwright.label.LabelsSheet;
import jarwright.lot.JarId;
import jarwright.page.LabelStock;
import jarwright.page.Wording;
import jarwright.pantry.Jar;
import jarwright.pantry.Standing;
import jarwright.problem.Place;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;

/** Labels printed again, from what was frozen of their lots. */
final class LabelsCommand implements Command {
  private static final String START = "start";
  private static final String COPIES = "copies";
  private static final String STOCK = "stock";
  private static final String SEALED = "sealed";
  private static final String CUT = "cut";
  private static final String OUT = "output";
  private static final String TEMPLATES = "templates";

  @Override
  public String name() {
    return "labels";
  }

  @Override
  public String arguments() {
    return "LOT… or JAR… [-o FILE.pdf]";
  }

  @Override
  public String summary() {
    return "labels again, and refrigerator labels for jars not for a shelf";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.withValue("o", OUT, "FILE.pdf", "not print/labels-LOT.pdf"))
        .addOption(CommonOptions.withValue(null, START, "N", "first free label of a used sheet"))
        .addOption(CommonOptions.withValue(null, COPIES, "N", "of each label"))
        .addOption(CommonOptions.withValue(null, STOCK, "NAME", "not the kitchen's; see stock"))
        .addOption(CommonOptions.flag(SEALED, "only jars whose seals have been told"))
        .addOption(CommonOptions.flag(CUT, "thin frames to cut along, for plain paper"))
        .addOption(SheetOptions.language())
        .addOption(CommonOptions.withValue(null, TEMPLATES, "DIR", "your own templates first"))
        .addOption(CommonOptions.withValue(null, PlanRun.KITCHEN, "FILE", "the kitchen's file"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    LabelsSheet.Use use = use(call);
    NamedJars named = NamedJars.of(call.arguments().stream().map(LabelsCommand::whole).toList());
    if (named.codes().isEmpty() || !named.words().isEmpty()) {
      throw new Usage(
          "labels needs lots or jars by their codes, as in: jarwright labels 260824A-T");
    }
    Books books = Books.open(call);
    SheetOptions options = new SheetOptions(call, books.kitchen());
    LabelStock stock = options.stock(call.value(STOCK));
    Wording words = options.words();
    List<Jar> jars = named.in(books.pantry(), j -> true);
    JarLabels choice = new JarLabels(books, words);
    List<JarLabel> labels = new ArrayList<>();
    List<JarId> without = new ArrayList<>();
    for (Jar jar : jars) {
      boolean wanted = !call.has(SEALED) || !jar.isOpen();
      Optional<JarLabel> label = wanted ? choice.of(jar) : Optional.empty();
      label.ifPresentOrElse(labels::add, () -> without.add(jar.id()));
    }
    if (labels.isEmpty()) {
      throw new Refused(
          Place.wholeFile(NamedJars.shown(without)),
          "none of these jars gets a label" + (call.has(SEALED) ? " with --sealed" : ""),
          "labels are for jars on the shelf, in the refrigerator, or still to be filled");
    }
    LocalDate made =
        labels.stream().map(l -> l.jar().lot().packed()).min(LocalDate::compareTo).get();
    Path file =
        call.path(OUT)
            .orElseGet(
                () ->
                    call.surroundings()
                        .resolve("print/labels-" + labels.get(0).jar().lot() + ".pdf"));
    PdfFile.write(
        file,
        LabelsSheet.of(labels, stock, options.registration(), use, words, made),
        call.path(TEMPLATES));
    call.tell(told(file, stock, labels, use));
    List<JarId> cooling =
        jars.stream().filter(j -> cools(j) && !without.contains(j.id())).map(Jar::id).toList();
    if (!cooling.isEmpty()) {
      call.tell(
          NamedJars.shown(cooling)
              + " still cooling: put their labels on when their seals are tested");
    }
    if (!without.isEmpty()) {
      call.tell("no label for " + NamedJars.shown(without));
    }
  }

  private static boolean cools(Jar jar) {
    return jar.standing() instanceof Standing.Cooling;
  }

  private static String told(
      Path file, LabelStock stock, List<JarLabel> labels, LabelsSheet.Use use) {
    int all = labels.size() * use.copies();
    long cold = labels.stream().filter(l -> l.coldDays().isPresent()).count();
    int next = (use.start() - 1 + all) % stock.labelsPerSheet() + 1;
    return "wrote "
        + file
        + ": "
        + all
        + (all == 1 ? " label" : " labels")
        + " on "
        + stock.id()
        + (cold == 0 ? "" : ", " + cold * use.copies() + " for the refrigerator")
        + (next == 1 ? "" : "; the last sheet is free from label " + next);
  }

  /** A lot alone means all its jars. */
  private static String whole(String argument) {
    boolean lot = argument.matches("\\s*[0-9][^/]*");
    return lot ? argument.strip() + "/all" : argument;
  }

  private static LabelsSheet.Use use(Call call) throws Usage {
    try {
      return new LabelsSheet.Use(number(call, START), number(call, COPIES), call.has(CUT));
    } catch (IllegalArgumentException e) {
      throw new Usage(e.getMessage());
    }
  }

  private static int number(Call call, String option) throws Usage {
    String text = call.value(option).orElse("1");
    if (!text.matches("-?\\d{1,6}")) {
      throw new Usage("--" + option + " takes a whole number, not " + text);
    }
    return Integer.parseInt(text);
  }
}
