package jarwright.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The rules on which package knows which, and on names. */
final class StructureRules {

  private static final List<String> JUNK =
      List.of("Util", "Common", "Impl", "Model", "Service", "Helper", "Manager", "Misc", "Stuff");

  private static final Pattern JUNK_CLASS =
      Pattern.compile(
          ".*[a-z0-9](" + String.join("|", JUNK) + ")s?|(" + String.join("|", JUNK) + ")s?");

  private static final Pattern JUNK_PACKAGE =
      Pattern.compile(".*\\.(?i:" + String.join("|", JUNK) + ")s?(\\..*)?");

  private StructureRules() {}

  static Map<String, ArchRule> of(House house) {
    Map<String, ArchRule> rules = new LinkedHashMap<>();
    rules.put("1 every class is in a package of the table", onlyKnownPackages(house));
    new TreeMap<>(House.MAY_USE)
        .keySet()
        .forEach(name -> rules.put("1 what " + name + " may use", mayUse(house, name)));
    rules.put("2 no package cycles", noCycles(house));
    new TreeSet<>(House.PRINT_OUTS)
        .forEach(
            name -> rules.put("3 " + name + " ignores the others", ignoresOthers(house, name)));
    new TreeMap<>(House.BEHIND)
        .forEach(
            (name, prefixes) ->
                prefixes.forEach(
                    prefix ->
                        rules.put(
                            "7 " + prefix + " stays behind " + name, behind(house, name, prefix))));
    rules.put("10 no junk-drawer class names", noJunkClasses());
    rules.put("10 no junk-drawer package names", noJunkPackages(house));
    return rules;
  }

  private static ArchRule onlyKnownPackages(House house) {
    return classes()
        .that()
        .resideOutsideOfPackage(House.STAND_IN)
        .should()
        .resideInAnyPackage(house.packages(House.MAY_USE.keySet()))
        .because("a package outside the table has no level, so nothing would say what it may know")
        .allowEmptyShould(true);
  }

  private static ArchRule mayUse(House house, String name) {
    return classes()
        .that()
        .resideInAPackage(house.base() + "." + name)
        .should()
        .onlyDependOnClassesThat(house.allowedFor(name))
        .because(
            "data flows one way, from plan to print-out, and a package knows only what lies before it")
        .allowEmptyShould(true);
  }

  private static ArchRule noCycles(House house) {
    return slices()
        .matching(house.base() + ".(*)")
        .should()
        .beFreeOfCycles()
        .because("packages that need each other cannot be understood, tested or changed alone")
        .allowEmptyShould(true);
  }

  private static ArchRule ignoresOthers(House house, String name) {
    Set<String> others = new TreeSet<>(House.PRINT_OUTS);
    others.remove(name);
    return noClasses()
        .that()
        .resideInAPackage(house.base() + "." + name)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(house.packages(others))
        .because(
            "each print-out is made from the domain alone; what two of them share belongs further down")
        .allowEmptyShould(true);
  }

  private static ArchRule behind(House house, String name, String prefix) {
    return noClasses()
        .that()
        .resideOutsideOfPackages(house.base() + "." + name, House.STAND_IN)
        .should()
        .dependOnClassesThat(describe("are in " + prefix, it -> House.isIn(it, prefix)))
        .because("a library seen by one package only can be replaced by changing that package only")
        .allowEmptyShould(true);
  }

  private static ArchRule noJunkClasses() {
    return noClasses()
        .should(
            Conditions.<JavaClass>be(
                "have a name that says nothing",
                it -> JUNK_CLASS.matcher(it.getSimpleName()).matches(),
                it -> it.getName() + " is named like a junk drawer"))
        .because(
            "a class is named for the one thing it is; a drawer for everything grows without end")
        .allowEmptyShould(true);
  }

  private static ArchRule noJunkPackages(House house) {
    return noClasses()
        .should(
            Conditions.<JavaClass>be(
                "be in a package whose name says nothing",
                it -> JUNK_PACKAGE.matcher(below(house, it)).matches(),
                it -> it.getName() + " is in a package named like a junk drawer"))
        .because("packages are named with the home canner's words")
        .allowEmptyShould(true);
  }

  private static String below(House house, JavaClass type) {
    return type.getPackageName().substring(house.base().length());
  }
}
