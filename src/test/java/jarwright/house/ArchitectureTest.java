package jarwright.house;

import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The program keeps the rules of the house. Another test shows that each rule can fail. */
class ArchitectureTest {

  private static final House HOUSE = new House("jarwright");

  static Map<String, ArchRule> rules(House house) {
    Map<String, ArchRule> rules = new LinkedHashMap<>(StructureRules.of(house));
    rules.putAll(PurityRules.of(house));
    return rules;
  }

  @TestFactory
  Stream<DynamicTest> theProgramKeepsTheRules() {
    JavaClasses program =
        new ClassFileImporter().importPath(SourceTree.root().resolve("target/classes"));
    assertFalse(program.isEmpty());
    return rules(HOUSE).entrySet().stream()
        .map(rule -> DynamicTest.dynamicTest(rule.getKey(), () -> rule.getValue().check(program)));
  }
}
