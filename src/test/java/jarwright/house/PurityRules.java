package jarwright.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noCodeUnits;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.GeneralCodingRules.THROW_GENERIC_EXCEPTIONS;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The rules on what code may do, wherever it stands. */
final class PurityRules {

  private static final List<String> IO =
      List.of(
          "java.io",
          "java.nio.file",
          "java.nio.channels",
          "java.net",
          "java.sql",
          "java.awt",
          "javax.imageio");

  private static final Set<String> GENERIC =
      Set.of(
          "java.lang.Exception",
          "java.lang.RuntimeException",
          "java.lang.Throwable",
          "java.lang.Error");

  private PurityRules() {}

  static Map<String, ArchRule> of(House house) {
    Map<String, ArchRule> rules = new LinkedHashMap<>();
    String[] core = house.packages(House.CORE);
    rules.put("4 the core does no I/O", noIo(core));
    rules.put("4 the core draws no random numbers", noRandom(core));
    rules.put("5 only cli reads the clock", noClock(house));
    rules.put("6 no default locale", noDefaultLocale());
    rules.put("8 only cli.Main touches the process", onlyMainTouchesProcess(house));
    rules.put("9 core fields are final", finalFields(core));
    rules.putAll(ExactnessRules.of(house));
    rules.put("12 no setters in the core", noSetters(core));
    rules.put("13 no generic exceptions thrown", noGenericExceptions());
    rules.put("13 no generic exceptions declared", noGenericDeclared());
    return rules;
  }

  private static ArchRule noIo(String[] core) {
    return noClasses()
        .that()
        .resideInAnyPackage(core)
        .should()
        .dependOnClassesThat(
            describe("do I/O", it -> IO.stream().anyMatch(prefix -> House.isIn(it, prefix))))
        .because(
            "what the core computes depends on its arguments only; files and networks are behind the doors")
        .allowEmptyShould(true);
  }

  private static ArchRule noRandom(String[] core) {
    return noClasses()
        .that()
        .resideInAnyPackage(core)
        .should(Conditions.access("draw random numbers", Ambient::isRandom))
        .because("the same plan gives the same bytes")
        .allowEmptyShould(true);
  }

  private static ArchRule noClock(House house) {
    return noClasses()
        .that()
        .resideOutsideOfPackage(house.base() + ".cli")
        .should(Conditions.access("read the clock or its zone", Ambient::isClock))
        .because("the time comes in as an argument, so that a run can be repeated and tested")
        .allowEmptyShould(true);
  }

  private static ArchRule noDefaultLocale() {
    return noClasses()
        .should(Conditions.access("depend on the default locale", Ambient::isDefaultLocale))
        .because("a Turkish or German computer must print the same letters, points and commas")
        .allowEmptyShould(true);
  }

  private static ArchRule onlyMainTouchesProcess(House house) {
    return noClasses()
        .that(
            describe(
                "are not cli.Main",
                it -> !outermost(it).getName().equals(house.base() + ".cli.Main")))
        .should(
            Conditions.access("touch the standard streams or end the process", Ambient::isProcess))
        .because("streams are handed in as arguments, and the program has one exit")
        .allowEmptyShould(true);
  }

  private static ArchRule finalFields(String[] core) {
    return fields()
        .that()
        .areDeclaredInClassesThat()
        .resideInAnyPackage(core)
        .should()
        .beFinal()
        .because("a value that was checked when it was made must stay as it was")
        .allowEmptyShould(true);
  }

  private static ArchRule noSetters(String[] core) {
    return noMethods()
        .that()
        .areDeclaredInClassesThat()
        .resideInAnyPackage(core)
        .should()
        .haveNameMatching("set[A-Z].*")
        .because("a changed value is a new value")
        .allowEmptyShould(true);
  }

  private static ArchRule noGenericExceptions() {
    return noClasses()
        .should(THROW_GENERIC_EXCEPTIONS)
        .because(
            "a fault without a type of its own can be neither told apart nor worded for the user")
        .allowEmptyShould(true);
  }

  private static ArchRule noGenericDeclared() {
    return noCodeUnits()
        .should(
            Conditions.<JavaCodeUnit>be(
                "declare a generic exception",
                it ->
                    it.getExceptionTypes().stream()
                        .anyMatch(type -> GENERIC.contains(type.getName())),
                it -> it.getFullName() + " declares a generic exception"))
        .because("a caller must see what can go wrong")
        .allowEmptyShould(true);
  }

  private static JavaClass outermost(JavaClass type) {
    return type.getEnclosingClass().map(PurityRules::outermost).orElse(type);
  }
}
