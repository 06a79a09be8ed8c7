package jarwright.house;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.AccessTarget.FieldAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.Set;

/** What the JDK takes from its surroundings: clock, random numbers, default locale, process. */
final class Ambient {

  private static final Set<String> RANDOM_SOURCES =
      Set.of(
          "java.util.Random",
          "java.util.concurrent.ThreadLocalRandom",
          "java.util.SplittableRandom");

  /** Methods and constructors that use the default locale unless they are given one. */
  private static final Set<String> LOCALE_WANTED =
      Set.of(
          "java.lang.String.format",
          "java.lang.String.toUpperCase",
          "java.lang.String.toLowerCase",
          "java.io.PrintStream.format",
          "java.io.PrintStream.printf",
          "java.io.PrintWriter.format",
          "java.io.PrintWriter.printf",
          "java.util.Formatter.<init>",
          "java.text.MessageFormat.<init>",
          "java.text.SimpleDateFormat.<init>",
          "java.text.DecimalFormatSymbols.<init>",
          "java.text.DecimalFormatSymbols.getInstance",
          "java.text.DateFormatSymbols.<init>",
          "java.text.DateFormatSymbols.getInstance",
          "java.text.Collator.getInstance",
          "java.text.RuleBasedCollator.getInstance",
          "java.text.BreakIterator.getCharacterInstance",
          "java.text.BreakIterator.getWordInstance",
          "java.text.BreakIterator.getLineInstance",
          "java.text.BreakIterator.getSentenceInstance",
          "java.time.format.DateTimeFormatter.ofPattern",
          "java.time.format.DateTimeFormatterBuilder.toFormatter",
          "java.util.Calendar.getInstance");

  /** Those that use it always. */
  private static final Set<String> LOCALE_NEVER =
      Set.of(
          "java.lang.String.formatted",
          "java.text.ChoiceFormat.<init>",
          "java.time.format.DateTimeFormatter.ofLocalizedDate",
          "java.time.format.DateTimeFormatter.ofLocalizedTime",
          "java.time.format.DateTimeFormatter.ofLocalizedDateTime",
          "java.util.Scanner.<init>",
          "java.util.Locale.getDefault",
          "java.util.Locale.setDefault");

  private static final Set<String> PROCESS =
      Set.of(
          "java.lang.System.out",
          "java.lang.System.err",
          "java.lang.System.in",
          "java.lang.System.setOut",
          "java.lang.System.setErr",
          "java.lang.System.setIn",
          "java.lang.System.console",
          "java.lang.System.exit",
          "java.lang.Runtime.exit",
          "java.lang.Runtime.halt");

  private static final Set<String> CLOCK =
      Set.of(
          "java.lang.System.currentTimeMillis",
          "java.lang.System.nanoTime",
          "java.util.Calendar.getInstance",
          "java.util.GregorianCalendar.<init>",
          "java.util.TimeZone.getDefault",
          "java.time.ZoneId.systemDefault");

  private Ambient() {}

  static boolean isRandom(JavaAccess<?> access) {
    String name = nameOf(access);
    return RANDOM_SOURCES.contains(ownerOf(access))
        || ownerOf(access).equals("java.security.SecureRandom")
        || ownerOf(access).startsWith("java.util.random.")
        || name.equals("java.lang.Math.random")
        || name.equals("java.util.UUID.randomUUID");
  }

  static boolean isClock(JavaAccess<?> access) {
    String name = nameOf(access);
    return CLOCK.contains(name)
        || (ownerOf(access).startsWith("java.time.") && name.endsWith(".now"))
        || name.startsWith("java.time.Clock.system")
        || name.startsWith("java.time.Clock.tick")
        || (name.equals("java.util.Date.<init>") && parametersOf(access).isEmpty());
  }

  static boolean isProcess(JavaAccess<?> access) {
    return PROCESS.contains(nameOf(access));
  }

  static boolean isDefaultLocale(JavaAccess<?> access) {
    String name = nameOf(access);
    if (LOCALE_NEVER.contains(name)) {
      return true;
    }
    if (name.equals("java.text.MessageFormat.format")) {
      return parametersOf(access).size() == 2; // The static one: pattern and arguments.
    }
    if (name.equals("java.util.ResourceBundle.getBundle")) {
      // Without a control that says otherwise, a missing bundle falls back to the default locale's.
      return !gives(access, "java.util.Locale")
          || !gives(access, "java.util.ResourceBundle$Control");
    }
    return (LOCALE_WANTED.contains(name) || isFormatFactory(name))
        && !gives(access, "java.util.Locale")
        && !gives(access, "java.text.DecimalFormatSymbols")
        && !gives(access, "java.text.DateFormatSymbols");
  }

  private static boolean isFormatFactory(String name) {
    return name.matches("java\\.text\\.(Number|Decimal|CompactNumber)Format\\.get\\w*Instance")
        || name.matches("java\\.text\\.(Simple)?DateFormat\\.get\\w*Instance")
        || name.equals("java.text.DecimalFormat.<init>");
  }

  private static boolean gives(JavaAccess<?> access, String type) {
    return parametersOf(access).stream().anyMatch(it -> it.getName().equals(type));
  }

  private static List<JavaClass> parametersOf(JavaAccess<?> access) {
    AccessTarget target = access.getTarget();
    return target instanceof CodeUnitAccessTarget code ? code.getRawParameterTypes() : List.of();
  }

  private static String ownerOf(JavaAccess<?> access) {
    return access.getTargetOwner().getName();
  }

  private static String nameOf(JavaAccess<?> access) {
    return ownerOf(access) + "." + access.getTarget().getName();
  }

  /** Whether the access takes or gives a number that is not exact. */
  static boolean isInexact(JavaAccess<?> access) {
    AccessTarget target = access.getTarget();
    if (target instanceof FieldAccessTarget field) {
      return isInexact(field.getRawType());
    }
    return isInexact(access.getTargetOwner())
        || parametersOf(access).stream().anyMatch(Ambient::isInexact)
        || (target instanceof CodeUnitAccessTarget code && isInexact(code.getRawReturnType()));
  }

  static boolean isInexact(JavaClass type) {
    String name = type.getBaseComponentType().getName();
    return Set.of("double", "float", "java.lang.Double", "java.lang.Float", "java.lang.StrictMath")
        .contains(name);
  }
}
