package jarwright.web;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import jarwright.lot.MistypedCode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What an address asks for. Only letters, digits, hyphens and slashes in a few fixed forms ask for
 * anything, so no address can leave the pages.
 */
sealed interface Route {
  Pattern LOT = Pattern.compile("/([0-9A-Z]+-[0-9A-Z]+)/?");
  Pattern JAR =
      Pattern.compile("/([0-9A-Z]+-[0-9A-Z]+/\\d{2,6})(?:/USE-BY-(\\d{4}-\\d{2}-\\d{2}))?/?");
  Pattern DEED =
      Pattern.compile("/([0-9A-Z]+-[0-9A-Z]+/\\d{2,6})/(" + String.join("|", Action.names()) + ")");

  record Index() implements Route {}

  record Code() implements Route {}

  record OfLot(LotCode lot) implements Route {}

  /**
   * @param useBy as the address says
   */
  record OfJar(JarId jar, Optional<LocalDate> useBy) implements Route {}

  record Act(JarId jar, Action action) implements Route {}

  /** A code that cannot have been printed. */
  record Mistyped(String message) implements Route {}

  record Nowhere() implements Route {}

  static Route of(String path) {
    if (path.equals("/")) {
      return new Index();
    }
    String capitals = path.toUpperCase(Locale.ROOT);
    if (capitals.equals("/CODE")) {
      return new Code();
    }
    try {
      return named(capitals);
    } catch (MistypedCode e) {
      return new Mistyped(e.getMessage());
    } catch (DateTimeException e) {
      return new Nowhere();
    }
  }

  private static Route named(String path) {
    Matcher deed = DEED.matcher(path);
    if (deed.matches()) {
      return new Act(JarId.parse(deed.group(1)), Action.valueOf(deed.group(2)));
    }
    Matcher jar = JAR.matcher(path);
    if (jar.matches()) {
      return new OfJar(
          JarId.parse(jar.group(1)), Optional.ofNullable(jar.group(2)).map(LocalDate::parse));
    }
    Matcher lot = LOT.matcher(path);
    return lot.matches() ? new OfLot(LotCode.parse(lot.group(1))) : new Nowhere();
  }
}
