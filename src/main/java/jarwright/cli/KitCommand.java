package jarwright.cli;

import jarwright.files.FolderName;
import jarwright.files.OutputFolder;
import jarwright.files.PlanReader;
import jarwright.pantry.Pantry;
import jarwright.problem.Refused;
import jarwright.render.Meanwhile;
import jarwright.render.Printer;
import java.io.IOException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import org.apache.commons.cli.Options;

/** The main job: checks plans, works them out, names their lots and writes every print-out. */
final class KitCommand implements Command {
  private static final String OUT = "output";
  private static final String TEMPLATES = "templates";
  private static final String DATED = "dated";
  private static final String LARGE = "large";
  private static final String PREVIEW = "preview";
  private static final String PRINT = "print";

  @Override
  public String name() {
    return "kit";
  }

  @Override
  public String arguments() {
    return "PLAN… [-o DIR]";
  }

  @Override
  public String summary() {
    return "turn plans into checklist, labels, sheets and records";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.withValue("o", OUT, "DIR", "write here, not to print/PLAN"))
        .addOption(CommonOptions.withValue(null, PlanRun.KITCHEN, "FILE", "the kitchen's file"))
        .addOption(CommonOptions.withValue(null, TEMPLATES, "DIR", "your own templates first"))
        .addOption(SheetOptions.language())
        .addOption(CommonOptions.flag(DATED, "put date, lot and clock times on the checklist"))
        .addOption(CommonOptions.flag(LARGE, "larger type on the checklist"))
        .addOption(CommonOptions.flag(PREVIEW, "add a PNG picture of every page"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    List<Path> plans = PlanRuns.named(call, name());
    SheetOptions.asked(call);
    checkFolders(plans);
    Register register = new Register(call);
    List<PlanRun> runs = PlanRuns.of(plans, call, register::lotsOf);
    register.doubles(runs).forEach(call::tell);
    Pantry pantry = register.with(runs);
    Printer printer = new Printer(call.path(TEMPLATES));
    Printer second = new Printer(call.path(TEMPLATES));
    Map<Path, List<String>> written = new LinkedHashMap<>();
    List<OutputFolder.Staged> staged = new ArrayList<>();
    try {
      for (PlanRun run : runs) {
        Map<String, byte[]> files = files(call, run, pantry, printer, second);
        Path to = folder(call, run, runs.size());
        staged.add(new OutputFolder(to).stage(files));
        written.put(to, List.copyOf(files.keySet()));
      }
      // Lots are registered once every file is on the disk, and before any takes its place.
      register.write(runs);
      for (OutputFolder.Staged files : staged) {
        files.putInPlace();
      }
    } finally {
      staged.forEach(OutputFolder.Staged::close);
    }
    written.forEach((to, names) -> call.tell("wrote " + to + ": " + String.join(", ", names)));
  }

  private static Map<String, byte[]> files(
      Call call, PlanRun run, Pantry pantry, Printer printer, Printer second)
      throws Refused, IOException {
    // The checklist takes about as long as all the rest.
    KitSheets rest = new KitSheets(run, second);
    Meanwhile<Map<String, byte[]>> made =
        Meanwhile.start(
            "all but the checklist",
            () -> {
              rest.day();
              rest.labels(call.pantry(), pantry);
              rest.shelf(pantry);
              rest.records();
              return rest.files();
            });
    KitSheets sheets = new KitSheets(run, printer);
    sheets.checklist(call.has(DATED), call.has(LARGE));
    try {
      sheets.add(made.outcome());
    } catch (ExecutionException e) {
      throw (Refused) e.getCause();
    }
    if (call.has(PREVIEW)) {
      sheets.previews();
    }
    sheets.json();
    return sheets.files();
  }

  /**
   * Some disks tell no capitals from small letters, and no accented letter from a letter and its
   * accent, so names that differ by those alone are one.
   */
  private static void checkFolders(List<Path> plans) throws Usage {
    Set<String> folders = new HashSet<>();
    for (Path plan : plans) {
      String folder = FolderName.of(PlanReader.stem(plan));
      String same = Normalizer.normalize(folder, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
      if (!folders.add(same)) {
        throw new Usage(
            "two plans would be written to the folder "
                + folder
                + "; rename one, or make their kits one by one, each with its own -o");
      }
    }
  }

  private static Path folder(Call call, PlanRun run, int plans) {
    Path folder = call.path(OUT).orElse(call.surroundings().resolve(PRINT));
    boolean own = call.has(OUT) && plans == 1;
    return own ? folder : folder.resolve(FolderName.of(run.plan().name()));
  }
}
