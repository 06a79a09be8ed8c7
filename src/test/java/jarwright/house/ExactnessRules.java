package jarwright.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMembers;

import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** No float or double where a person's safety hangs on the figure. */
final class ExactnessRules {

  static final List<String> EXACT = List.of("quantity", "process", "batch");

  private static final String WHY =
      "a binary fraction is rounded behind one's back, and a dose, a minute or a foot must not be";

  private ExactnessRules() {}

  static Map<String, ArchRule> of(House house) {
    Map<String, ArchRule> rules = new LinkedHashMap<>();
    String[] exact = house.packages(EXACT);
    rules.put(
        "11 no float or double in a signature",
        noMembers()
            .that()
            .areDeclaredInClassesThat()
            .resideInAnyPackage(exact)
            .should(
                Conditions.<JavaMember>be(
                    "take or give a number that is not exact",
                    ExactnessRules::isInexact,
                    it -> it.getFullName() + " takes or gives a float or double"))
            .because(WHY)
            .allowEmptyShould(true));
    rules.put(
        "11 no Float or Double as a type",
        noClasses()
            .that()
            .resideInAnyPackage(exact)
            .should()
            .dependOnClassesThat(describe("are not exact", Ambient::isInexact))
            .because(WHY)
            .allowEmptyShould(true));
    rules.put(
        "11 no float or double in a call",
        noClasses()
            .that()
            .resideInAnyPackage(exact)
            .should(Conditions.access("use a number that is not exact", Ambient::isInexact))
            .because(WHY)
            .allowEmptyShould(true));
    return rules;
  }

  private static boolean isInexact(JavaMember member) {
    if (member instanceof JavaCodeUnit code) {
      return Ambient.isInexact(code.getRawReturnType())
          || code.getRawParameterTypes().stream().anyMatch(Ambient::isInexact);
    }
    return member instanceof JavaField field && Ambient.isInexact(field.getRawType());
  }
}
