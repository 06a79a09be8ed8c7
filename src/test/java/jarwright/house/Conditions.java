package jarwright.house;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.function.Function;
import java.util.function.Predicate;

/** Conditions that the architecture library does not bring along. */
final class Conditions {
  private Conditions() {}

  /** A property of the class or member itself. */
  static <T> ArchCondition<T> be(
      String description, Predicate<T> test, Function<T, String> message) {
    return new ArchCondition<>(description) {
      @Override
      public void check(T item, ConditionEvents events) {
        events.add(new SimpleConditionEvent(item, test.test(item), message.apply(item)));
      }
    };
  }

  /** A call, a method reference or a field access anywhere in the class. */
  static ArchCondition<JavaClass> access(String description, Predicate<JavaAccess<?>> test) {
    return new ArchCondition<>(description) {
      @Override
      public void check(JavaClass item, ConditionEvents events) {
        for (JavaAccess<?> access : item.getAccessesFromSelf()) {
          if (test.test(access)) {
            events.add(SimpleConditionEvent.satisfied(access, access.getDescription()));
          }
        }
      }
    };
  }
}
