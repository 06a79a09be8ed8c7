package jarwright.cli;

import jarwright.batch.Batch;
import jarwright.checklist.BatchView;
import jarwright.checklist.ChecklistSheet;
import jarwright.day.CannerFigures;
import jarwright.day.Checklist;
import jarwright.day.ClockTime;
import jarwright.day.DaySheet;
import jarwright.day.SectionTimes;
import jarwright.day.StepTexts;
import jarwright.files.BuyingTables;
import jarwright.files.GelPointTable;
import jarwright.files.KitJson;
import jarwright.files.LabelStocks;
import jarwright.files.StepTables;
import jarwright.label.JarLabel;
import jarwright.label.LabelsSheet;
import jarwright.lot.LotCode;
import jarwright.page.LabelStock;
import jarwright.page.PaperSize;
import jarwright.page.Registration;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import jarwright.pantry.Advice;
import jarwright.pantry.Jar;
import jarwright.pantry.Pantry;
import jarwright.pantry.Standing;
import jarwright.plan.Kitchen;
import jarwright.problem.Refused;
import jarwright.process.Buying;
import jarwright.process.GelPoints;
import jarwright.process.PreparationStep;
import jarwright.process.Product;
import jarwright.record.PlannedPages;
import jarwright.render.Preview;
import jarwright.render.Printer;
import jarwright.render.WordBundle;
import jarwright.shelf.ShelfSheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The print-outs of one plan, by the names of their files. */
final class KitSheets {
  private static final int TYPICAL_PDF = 1 << 16;
  private static final String PDF = ".pdf";

  /** A page fills a screen, and its smallest words can be read. */
  private static final int PREVIEW_DPI = 110;

  private final PlanRun run;
  private final Printer printer;
  private final Wording words;
  private final ProductNames names;
  private final PaperSize paper;
  private final LocalDate made;
  private final Buying buying;
  private final Map<String, byte[]> files = new LinkedHashMap<>();
  private final Map<Product, List<PreparationStep>> steps = new HashMap<>();

  KitSheets(PlanRun run, Printer printer) throws IOException, Refused {
    this.run = run;
    this.printer = printer;
    this.words = WordBundle.load(run.plan().kitchen().language());
    this.buying = BuyingTables.read();
    this.names = new ProductNames(run.plan().kitchen().language());
    this.paper = PaperSize.parse(run.plan().kitchen().paper().id());
    this.made =
        run.batches().stream().map(b -> b.plan().date()).min(LocalDate::compareTo).orElseThrow();
  }

  Map<String, byte[]> files() {
    return files;
  }

  /** Print-outs of the same plan that were made elsewhere. */
  void add(Map<String, byte[]> more) {
    files.putAll(more);
  }

  void checklist(boolean dated, boolean large) throws IOException, Refused {
    List<Map<String, Object>> views = new ArrayList<>();
    GelPoints gelPoints = GelPointTable.read();
    for (Batch batch : run.batches()) {
      BatchView view = new BatchView(batch, names.of(batch.product()), words, names::ingredient);
      List<PreparationStep> steps = steps(batch.product());
      IdentityHashMap<PreparationStep, String> ready = new IdentityHashMap<>();
      if (dated) {
        SectionTimes times = times(batch);
        view.dated(times);
        ClockTime clock = new ClockTime(batch.kitchen().clock(), words);
        times
            .ready()
            .forEach(
                (step, at) ->
                    ready.put(
                        steps.get(step),
                        words.text(
                            "time.until", Map.of("time", clock.of(at, batch.plan().date())))));
      }
      Checklist list =
          new Checklist(
              batch,
              steps,
              gelPoints,
              CannerFigures.of(run.loads().get(batch), batch.kitchen().units(), words),
              words,
              step -> Optional.ofNullable(ready.get(step)));
      views.add(view.with(list.sections()));
    }
    pdf("checklist.pdf", ChecklistSheet.of(views, paper, words, made, large));
  }

  private SectionTimes times(Batch batch) {
    return run.days().stream()
        .filter(d -> d.date().equals(batch.plan().date()))
        .map(d -> SectionTimes.of(d, batch.lot()))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Labels for the jars that are to be filled or stand on a shelf; none where no such jar is left.
   *
   * @param household its folder, which may have label stocks of its own
   * @param pantry with the kit's lots registered: what came out unfit gets no label again
   */
  void labels(Path household, Pantry pantry) throws IOException, Refused {
    Kitchen kitchen = run.plan().kitchen();
    List<JarLabel> labels = new ArrayList<>();
    for (Batch batch : run.batches()) {
      JarLabel first =
          JarLabel.of(
              run.record(batch), names.of(batch.product()), kitchen.units(), kitchen.link(), words);
      first.upTo(batch.jars()).stream()
          .filter(l -> pantry.jar(l.jar()).filter(j -> Advice.isLabelled(j, then())).isPresent())
          .forEach(labels::add);
    }
    if (labels.isEmpty()) {
      return;
    }
    LabelStock stock = LabelStocks.read(household).forKitchen(kitchen);
    Registration registration = LabelsSheet.registration(kitchen);
    pdf(
        "labels.pdf",
        LabelsSheet.of(labels, stock, registration, LabelsSheet.Use.USUAL, words, made));
  }

  /**
   * The inventory with this kit's jars among those that are there.
   *
   * @param pantry with the kit's lots registered
   */
  void shelf(Pantry pantry) throws IOException {
    Set<LotCode> own = run.batches().stream().map(Batch::lot).collect(Collectors.toSet());
    Stream<Jar> jars =
        pantry
            .jars()
            .filter(
                j ->
                    j.standing().isHere()
                        || (own.contains(j.id().lot())
                            && j.standing() instanceof Standing.Planned));
    ShelfSheet shelf = new ShelfSheet(words, names::of);
    pdf("shelf.pdf", shelf.of(jars, run.plan().kitchen().household(), then(), paper));
  }

  /** As of the day of packing, so that the same plan gives the same sheets on any day. */
  private OffsetDateTime then() {
    return made.atStartOfDay().atOffset(ZoneOffset.UTC);
  }

  /** In the language of the print-outs. */
  private List<PreparationStep> steps(Product product) throws IOException, Refused {
    List<PreparationStep> read = steps.get(product);
    if (read == null) {
      read = StepTables.read(product, words.language());
      steps.put(product, read);
    }
    return read;
  }

  void day() throws IOException, Refused {
    for (Batch batch : run.batches()) {
      steps(batch.product());
    }
    DaySheet day =
        new DaySheet(names::of, names::ingredient, buying, new StepTexts(words, steps::get));
    pdf("day.pdf", day.of(run.days(), paper, made));
  }

  void records() {
    PlannedPages pages = new PlannedPages(words, names::of);
    for (Batch batch : run.batches()) {
      files.put(
          "records/" + PlannedPages.href(batch), printer.html(pages.page(batch, run.sizes(batch))));
    }
    files.put("records/index.html", printer.html(pages.index(run.batches())));
  }

  /** A picture of each page of the PDFs made before it. */
  void previews() throws IOException {
    for (Map.Entry<String, byte[]> file : List.copyOf(files.entrySet())) {
      if (file.getKey().endsWith(PDF)) {
        String name = file.getKey().substring(0, file.getKey().length() - PDF.length());
        Preview.draw(
            file.getValue(),
            PREVIEW_DPI,
            (page, png) -> files.put("preview/" + name + "-" + page + ".png", png));
      }
    }
  }

  /** Everything computed, for other programs; names the files made before it. */
  void json() throws IOException {
    List<KitJson.Entry> entries =
        run.batches().stream().map(b -> new KitJson.Entry(b, run.record(b))).toList();
    files.put(
        "kit.json",
        KitJson.of(run.plan(), entries, run.days(), buying, List.copyOf(files.keySet())));
  }

  private void pdf(String file, Sheet sheet) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream(TYPICAL_PDF);
    printer.pdf(sheet, out);
    files.put(file, out.toByteArray());
  }
}
