package jarwright.files;

import jarwright.plan.BatchPlan;
import jarwright.plan.Kitchen;
import jarwright.plan.OwnTime;
import jarwright.plan.Plan;
import jarwright.problem.Nearest;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reads a plan, YAML or CSV, with the kitchen it is for. Everything wrong is collected and told
 * together; a plan with one problem is not read at all.
 */
public final class PlanReader {
  private static final List<String> KEYS = List.of("kitchen", "batches");
  private static final int LONGEST_NAME = 120;
  private static final int MOST_BATCHES = 200;
  private static final String SEE = "write kitchen: and batches: at the left margin";

  private final ProcessTables tables;

  public PlanReader(ProcessTables tables) {
    this.tables = tables;
  }

  /**
   * Reads a plan file. A name that ends in .csv, .tsv or .txt is read as CSV, any other as YAML.
   *
   * @param kitchenFile the household's kitchen.yaml, where there is one; the plan's own kitchen
   *     wins key by key
   * @throws Refused with every problem, in the order of the files' lines
   * @throws IOException where a file cannot be read
   */
  public Plan read(Path plan, Optional<Path> kitchenFile) throws IOException, Refused {
    Problems problems = new Problems();
    Optional<Plan> read = read(plan, kitchenFile, problems);
    problems.refuse();
    return read.orElseThrow(() -> new IllegalArgumentException("a plan without a problem told"));
  }

  /**
   * Reads as much of a plan as is sound, so that what is wrong with its batches can be told
   * together with what is wrong in its words.
   *
   * @param problems gets every problem found; where there is one, the plan is not to be used
   * @return the batches that can be read, or none where the kitchen cannot
   * @throws Refused where the file as a whole is no plan
   */
  public Optional<Plan> read(Path plan, Optional<Path> kitchenFile, Problems problems)
      throws IOException, Refused {
    PlanWords words = new PlanWords(tables);
    Map<String, Written.Entry> kitchen = new LinkedHashMap<>();
    Place household = Place.wholeFile(plan.toString());
    if (kitchenFile.isPresent()) {
      Written.Keys keys = kitchenKeys(kitchenFile.get(), problems);
      household = keys.place();
      kitchen.putAll(keys.entries());
    }
    Written.Keys top = planKeys(TextFile.read(plan), plan, problems);
    new Fields(top, "a plan", KEYS, elsewhere(), problems);
    Optional<Written.Keys> own = kitchen(top, problems);
    own.ifPresent(k -> kitchen.putAll(k.entries()));
    Place place = own.map(Written.Keys::place).orElse(household);
    Optional<Kitchen> read =
        new KitchenReader(new Written.Keys(place, kitchen), words, problems).read();
    for (OwnTime time : read.map(Kitchen::times).orElse(List.of())) {
      checkProduct(time, problems);
    }
    Around around = new Around(words, read.isPresent(), placesOf(kitchen));
    List<BatchPlan> batches = batches(top, plan, around, problems);
    return read.map(k -> new Plan(stem(plan), k, batches));
  }

  private void checkProduct(OwnTime time, Problems problems) throws IOException, Refused {
    List<String> known =
        tables.products().stream()
            .flatMap(p -> Stream.of(p.id(), p.category()))
            .distinct()
            .toList();
    if (time.of().isPresent() && !known.contains(time.of().get())) {
      String word = time.of().get();
      problems.add(
          time.where(),
          "of: there is no product or kind of products \"" + Fields.shown(word) + "\"",
          Nearest.to(word, known)
              .map(k -> "did you mean " + k + "?")
              .orElse("leave of: out to mean all products"));
    }
  }

  /**
   * Reads a kitchen alone, for commands that have no plan.
   *
   * @throws Refused with every problem in it
   */
  public static Kitchen readKitchen(Path file) throws IOException, Refused {
    Problems problems = new Problems();
    PlanWords words = new PlanWords(ProcessTables.ofProgram());
    Optional<Kitchen> kitchen =
        new KitchenReader(kitchenKeys(file, problems), words, problems).read();
    problems.refuse();
    return kitchen.orElseThrow(
        () -> new IllegalArgumentException("a kitchen without a problem told"));
  }

  private static Written.Keys kitchenKeys(Path file, Problems problems)
      throws IOException, Refused {
    Written written = YamlTree.read(TextFile.read(file), problems);
    if (written instanceof Written.Keys keys) {
      return keys;
    }
    throw new Refused(
        written.place(), "a kitchen has keys", "write altitude: 420 m, canners: and so on");
  }

  private static Written.Keys planKeys(TextFile file, Path plan, Problems problems) throws Refused {
    if (isTable(plan)) {
      Written.Items rows =
          CsvTree.read(file, BatchReader.KEYS, BatchReader.OF_THE_KITCHEN, problems);
      return new Written.Keys(
          rows.place(), Map.of("batches", new Written.Entry(rows.place(), rows)));
    }
    Written written = YamlTree.read(file, problems);
    if (written instanceof Written.Keys keys) {
      return keys;
    }
    throw new Refused(written.place(), "this is no plan", SEE);
  }

  private static boolean isTable(Path plan) {
    String name = plan.toString().toLowerCase(Locale.ROOT);
    return name.endsWith(".csv") || name.endsWith(".tsv") || name.endsWith(".txt");
  }

  private static Map<String, String> elsewhere() {
    Map<String, String> elsewhere = new LinkedHashMap<>();
    BatchReader.KEYS.forEach(k -> elsewhere.put(k, "indent it below batches:, after a hyphen"));
    KitchenReader.KEYS.forEach(k -> elsewhere.put(k, "indent it below kitchen:"));
    return elsewhere;
  }

  private static Optional<Written.Keys> kitchen(Written.Keys top, Problems problems) {
    Written.Entry entry = top.entries().get("kitchen");
    if (entry == null) {
      return Optional.empty();
    }
    if (entry.value() instanceof Written.Keys keys) {
      return Optional.of(keys);
    }
    problems.add(
        entry.place(),
        "kitchen: takes keys",
        "indent altitude: and the others below it, each with a space after its colon");
    return Optional.empty();
  }

  /**
   * What batches are read with.
   *
   * @param soundKitchen whether their kitchen was understood
   * @param kitchen places of its keys
   */
  private record Around(PlanWords words, boolean soundKitchen, Map<String, Place> kitchen) {}

  private List<BatchPlan> batches(Written.Keys top, Path plan, Around around, Problems problems)
      throws IOException, Refused {
    Written.Entry entry = top.entries().get("batches");
    List<BatchPlan> batches = new ArrayList<>();
    if (entry == null) {
      problems.add(top.place(), "batches: is missing", SEE);
      return batches;
    }
    if (!(entry.value() instanceof Written.Items list) || list.items().isEmpty()) {
      problems.add(
          entry.place(),
          "the plan has no batch",
          isTable(plan)
              ? "write one line for each batch below the keys"
              : "begin each batch with - product:");
      return batches;
    }
    if (list.items().size() > MOST_BATCHES) {
      problems.add(
          entry.place(),
          list.items().size() + " batches are more than a plan has",
          "write " + MOST_BATCHES + " or fewer, or several plans");
      return batches;
    }
    ProductFinder products = new ProductFinder(tables, productsIn(list), around.words());
    BatchReader reader = new BatchReader(products, around.words(), around.soundKitchen(), problems);
    String name = String.valueOf(plan.getFileName());
    if (name.length() > LONGEST_NAME || !OneLine.isPrintable(name)) {
      problems.add(
          Place.wholeFile(Fields.shown(name)),
          "the plan's file name is too long, or has characters that cannot be printed",
          "give it a short plain name");
    }
    int position = 0;
    for (Written item : list.items()) {
      position++;
      if (item instanceof Written.Keys keys) {
        reader.read(keys, name, position, around.kitchen()).ifPresent(batches::add);
      } else {
        problems.add(item.place(), "a batch has keys", "write - product: and so on");
      }
    }
    return batches;
  }

  /** The product words of a plan, in the form that ids have. */
  private static Set<String> productsIn(Written.Items batches) {
    Set<String> words = new HashSet<>();
    for (Written batch : batches.items()) {
      if (batch instanceof Written.Keys keys
          && keys.entries().containsKey(BatchReader.PRODUCT)
          && keys.entries().get(BatchReader.PRODUCT).value() instanceof Written.Text text) {
        words.add(Fields.plain(text.text()));
      }
    }
    return words;
  }

  private static Map<String, Place> placesOf(Map<String, Written.Entry> kitchen) {
    Map<String, Place> places = new LinkedHashMap<>();
    kitchen.forEach((key, entry) -> places.put(key, entry.value().place()));
    return places;
  }

  /** The file's name without folder and ending. */
  public static String stem(Path plan) {
    String name = String.valueOf(plan.getFileName());
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
