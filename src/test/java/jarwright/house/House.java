package jarwright.house;

import static java.util.Map.entry;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The table of packages below one base package: their levels, what each may use, and which outside
 * libraries stand behind it.
 */
record House(String base) {

  static final List<Set<String>> LEVELS =
      List.of(
          Set.of("quantity", "problem", "lot"),
          Set.of("process", "page"),
          Set.of("plan", "ask"),
          Set.of("batch", "water"),
          Set.of("day", "pantry"),
          Set.of("checklist", "label", "shelf", "record"),
          Set.of("files", "render", "web"),
          Set.of("cli"));

  /** The print-outs, which do not know each other. */
  static final Set<String> PRINT_OUTS = LEVELS.get(5);

  static final Set<String> CORE = levels(0, 5);

  static final Map<String, Set<String>> MAY_USE =
      Map.ofEntries(
          entry("quantity", Set.of()),
          entry("problem", Set.of()),
          entry("lot", Set.of()),
          entry("process", Set.of("quantity", "problem")),
          entry("page", Set.of("quantity")),
          entry("plan", Set.of("quantity", "problem", "process")),
          entry("ask", Set.of("problem", "process")),
          entry("batch", levels(0, 2)),
          entry("water", Set.of("quantity", "process", "plan")),
          entry("day", levels(0, 3)),
          entry("pantry", levels(0, 3)),
          entry("checklist", levels(0, 4)),
          entry("label", levels(0, 4)),
          entry("shelf", levels(0, 4)),
          entry("record", levels(0, 4)),
          entry("files", levels(0, 4)),
          entry("render", Set.of("page", "quantity", "lot")),
          entry("web", and(levels(0, 4), "record", "render")),
          entry("cli", levels(0, 6)));

  /** Prefixes of the packages that only one package of the house may see. */
  static final Map<String, List<String>> BEHIND =
      Map.of(
          "files",
              List.of("org.apache.commons.csv", "org.snakeyaml.engine", "com.fasterxml.jackson"),
          "render",
              List.of(
                  "com.lowagie",
                  "com.google.zxing",
                  "freemarker",
                  "org.apache.pdfbox",
                  "javax.xml.stream",
                  "javax.imageio"),
          "web", List.of("com.sun.net.httpserver"),
          "cli", List.of("org.apache.commons.cli"));

  /** Where a class of ours stands in for one that the PDF library hides from other packages. */
  static final String STAND_IN = "com.lowagie.text.pdf";

  static Set<String> levels(int from, int to) {
    Set<String> names = new TreeSet<>();
    LEVELS.subList(from, to + 1).forEach(names::addAll);
    return names;
  }

  private static Set<String> and(Set<String> some, String... more) {
    Set<String> all = new TreeSet<>(some);
    all.addAll(Arrays.asList(more));
    return all;
  }

  String[] packages(Iterable<String> names) {
    Set<String> full = new TreeSet<>();
    names.forEach(name -> full.add(base + "." + name));
    return full.toArray(String[]::new);
  }

  /** What a package may depend on: the JDK, itself, its row of the table, its libraries. */
  DescribedPredicate<JavaClass> allowedFor(String name) {
    Set<String> own = new TreeSet<>(Arrays.asList(packages(MAY_USE.get(name))));
    own.add(base + "." + name);
    List<String> outside = BEHIND.getOrDefault(name, List.of());
    return DescribedPredicate.describe(
        "belong to the JDK's java packages, to " + own + " or to " + outside,
        it -> {
          JavaClass type = it.getBaseComponentType();
          return type.isPrimitive()
              || isIn(type, "java")
              || own.contains(type.getPackageName())
              || outside.stream().anyMatch(prefix -> isIn(type, prefix));
        });
  }

  static boolean isIn(JavaClass type, String prefix) {
    return type.getPackageName().equals(prefix) || type.getPackageName().startsWith(prefix + ".");
  }
}
