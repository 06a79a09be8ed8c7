package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Names that Windows keeps for itself: Microsoft, "Naming Files, Paths, and Namespaces", which also
 * forbids the signs and the full stop or space at the end.
 */
class FolderNameTest {
  @ParameterizedTest
  @CsvSource({
    "plum-day,plum-day",
    "console,console",
    "aux,plan-aux",
    "CON,plan-CON",
    "com1,plan-com1",
    "nul.2026,plan-nul.2026",
    "nul .2026,plan-nul .2026",
    "CONOUT$,plan-CONOUT$",
    "'two\nlines',two-lines",
    "'plums ',plums",
    "plums..,plums",
    "..,plan",
    ".,plan",
    "a:b,a-b",
    "what?,what-",
    ".hidden,.hidden",
    "Zwetschgen 24. August,Zwetschgen 24. August"
  })
  void isOneThatEverySystemTakes(String plan, String folder) {
    assertEquals(folder, FolderName.of(plan));
  }
}
