package jarwright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import jarwright.quantity.Altitude;
import jarwright.quantity.GaugePressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Every product, method, pack and jar, asked at every foot and every metre, answers what the table
 * prints there and nothing else.
 */
class EveryFootTest {
  private static final int LOWEST = -100;
  private static final int HIGHEST = 12_000;
  private static final int LOWEST_METRE = -30;
  private static final int HIGHEST_METRE = 3_658;
  private static final int SPARSE = 97;

  /** Every metre is asked of each seventh setting in turn: the feet have asked all of them. */
  private static final int TURNS = 7;

  /** Every foot, unless a mutation run asks for fewer. */
  private static final int STEP = Integer.getInteger("sweep.step", 1);

  /** The last feet of all printed bands, and the shore. */
  private static final int[] BORDERS = {-1, 0, 1_000, 2_000, 3_000, 4_000, 6_000, 8_000};

  private static final List<Pack> PACKS = List.of(Pack.RAW, Pack.HOT);
  private static final Map<String, List<PrintedRow>> PRINTED =
      PrintedRow.all().stream().collect(Collectors.groupingBy(PrintedRow::product));

  /** What is asked, with the rows that the table prints for it at any altitude. */
  private record Asked(
      Product product, Method method, Pack pack, JarSize jar, List<PrintedRow> printed) {
    static Asked of(Product product, Method method, Pack pack, JarSize jar) {
      List<PrintedRow> rows = PRINTED.get(product.id());
      boolean listed = rows.stream().anyMatch(r -> r.jar().equals(jar.id()));
      String size = listed || isFishInQuarts(product) ? jar.id() : servedAs(jar.id());
      return new Asked(
          product,
          method,
          pack,
          jar,
          rows.stream()
              .filter(r -> r.method().equals(method.id()))
              .filter(r -> r.isFor(pack.id()) && r.jar().equals(size))
              .toList());
    }

    /** AIB 539 (2015) Guide 1: 1/2-pint as pint, 1-1/2-pint as quart. */
    private static String servedAs(String jar) {
      return switch (jar) {
        case "half-pint" -> "pint";
        case "1-1/2-pint" -> "quart";
        default -> jar;
      };
    }

    /** AIB 539 (2015) p. 5-12: its canner routine is for quart jars. */
    private static boolean isFishInQuarts(Product product) {
      return product.id().equals("fish-in-quart-jars");
    }

    /** Sizes that another's rows serve are those rows again. */
    boolean isListed() {
      return !printed.isEmpty() && printed.get(0).jar().equals(jar.id());
    }

    Answer answer(Altitude altitude) {
      return Book.get().lookUp(new Setting(product, method, pack, jar, altitude));
    }

    @Override
    public String toString() {
      return product.id() + ", " + method + ", " + pack + ", " + jar;
    }
  }

  /**
   * What is not listed, or has no rows at all, is asked at the borders of the bands and between.
   */
  @Test
  void everyFootAnswersThePrintedRow() {
    IntFunction<Altitude> feet = each(LOWEST, HIGHEST, Altitude::feet);
    for (Asked asked : all()) {
      for (int foot = LOWEST; foot <= HIGHEST; foot += asked.isListed() ? STEP : SPARSE) {
        assertAgrees(asked, asked.answer(feet.apply(foot)), foot);
      }
      for (int border : BORDERS) {
        assertAgrees(asked, asked.answer(feet.apply(border)), border);
        assertAgrees(asked, asked.answer(feet.apply(border + 1)), border + 1);
      }
    }
  }

  /** A metre is 1250/381 feet; the table is asked at the next whole foot. */
  @Test
  void everyMetreAnswersTheRowOfTheNextWholeFoot() {
    List<Asked> listed = all().stream().filter(Asked::isListed).toList();
    for (int metre = LOWEST_METRE; metre <= HIGHEST_METRE; metre++) {
      Altitude altitude = Altitude.metres(metre);
      int foot = Math.floorDiv(metre * 1_250 + 380, 381);
      for (int i = Math.floorMod(metre, TURNS); i < listed.size(); i += TURNS) {
        assertAgrees(listed.get(i), listed.get(i).answer(altitude), foot);
      }
    }
  }

  /**
   * Neither the minutes nor the pressure of an option; nor do fewer minutes come at no more psi.
   */
  @Test
  void neitherMinutesNorPressureFallHigherUp() {
    for (Asked asked : all()) {
      List<TableRow> below = List.of();
      for (int foot : new int[] {0, 1_001, 2_001, 3_001, 4_001, 6_001, 8_001}) {
        List<TableRow> here = rows(asked.answer(Altitude.feet(foot)));
        for (int i = 0; i < Math.min(below.size(), here.size()); i++) {
          assertNoLess(asked, below.get(i), here.get(i));
        }
        for (TableRow low : below) {
          for (TableRow high : here) {
            if (psi(high).compareTo(psi(low)) <= 0) {
              assertTrue(minutes(high) >= minutes(low), () -> asked + " " + Book.say(high));
            }
          }
        }
        below = here.isEmpty() ? below : here;
      }
    }
  }

  private static void assertNoLess(Asked asked, TableRow low, TableRow high) {
    assertTrue(
        minutes(high) >= minutes(low) && psi(high).compareTo(psi(low)) >= 0,
        () -> asked + ": " + Book.say(high) + " above " + Book.say(low));
  }

  private static List<TableRow> rows(Answer answer) {
    return answer.fold(Answer.Found::rows, no -> List.<TableRow>of(), gap -> List.<TableRow>of());
  }

  @Test
  void nothingIsAnsweredThatThePrintedTableDoesNotHave() {
    long rows = PRINTED.values().stream().mapToLong(List::size).sum();
    assertEquals(1_590, rows);
    assertEquals(161, PRINTED.size());
    assertEquals(
        PRINTED.keySet(),
        Book.get().products().stream().map(Product::id).collect(Collectors.toSet()));
    assertEquals(
        rows, Book.get().products().stream().mapToLong(p -> Book.get().rows(p.id()).size()).sum());
  }

  private static void assertAgrees(Asked asked, Answer answer, int foot) {
    boolean agrees =
        answer.fold(
            found -> isSame(asked, found, foot),
            closed -> holds(asked, foot) && !isTested(asked, foot),
            gap -> !holds(asked, foot));
    if (!agrees) {
      fail(asked + " at " + foot + " ft: " + Book.say(answer) + ", printed: " + asked.printed());
    }
  }

  private static boolean isSame(Asked asked, Answer.Found found, int foot) {
    int next = 0;
    for (PrintedRow row : asked.printed()) {
      if (row.holds(foot) && row.isTested()) {
        if (next == found.rows().size() || !isSame(found.rows().get(next++), row)) {
          return false;
        }
      }
    }
    Optional<JarSize> served =
        asked.isListed() ? Optional.empty() : JarSize.named(asked.printed().get(0).jar());
    return next > 0 && next == found.rows().size() && found.printedFor().equals(served);
  }

  private static boolean isSame(TableRow row, PrintedRow printed) {
    TestedProcess process = row.process().orElseThrow();
    return process.minutes() == printed.minutes() && process.pressure().equals(printed.pressure());
  }

  private static boolean holds(Asked asked, int foot) {
    return asked.printed().stream().anyMatch(r -> r.holds(foot));
  }

  private static boolean isTested(Asked asked, int foot) {
    return asked.printed().stream().anyMatch(r -> r.holds(foot) && r.isTested());
  }

  private static int minutes(TableRow row) {
    return row.process().orElseThrow().minutes();
  }

  private static GaugePressure psi(TableRow row) {
    return row.process().orElseThrow().pressure().orElse(GaugePressure.psi(0));
  }

  private static List<Asked> all() {
    List<Asked> all = new ArrayList<>();
    for (Product product : Book.get().products()) {
      for (Method method : Method.values()) {
        for (Pack pack : PACKS) {
          for (JarSize jar : JarSize.values()) {
            all.add(Asked.of(product, method, pack, jar));
          }
        }
      }
    }
    return all;
  }

  /** Made once: exact altitudes cost more than looking up. */
  private static IntFunction<Altitude> each(int from, int to, IntFunction<Altitude> make) {
    List<Altitude> made = IntStream.rangeClosed(from, to).mapToObj(make).toList();
    return i -> made.get(i - from);
  }
}
