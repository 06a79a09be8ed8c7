package jarwright.web;

import static jarwright.pantry.InventedKitchen.NOON;
import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.entry;
import static jarwright.pantry.InventedKitchen.numbered;
import static jarwright.pantry.InventedKitchen.planned;
import static jarwright.pantry.InventedKitchen.sound;

import jarwright.files.FoodTables;
import jarwright.lot.JarId;
import jarwright.pantry.Entry;
import jarwright.pantry.Happening;
import jarwright.pantry.Jar;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.JarReport;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.pantry.Vouched;
import jarwright.quantity.Units;
import jarwright.record.LotRecord;
import jarwright.record.RecordPages;
import jarwright.render.Printer;
import jarwright.render.WordBundle;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Requests of the fuzzer's making, past the JDK's own reading of them. */
public final class FuzzedRequests {
  private static final int PORT = 8080;
  private static final List<Entry> LEDGER =
      List.of(
          entry(PLUMS, "", planned("plums-halved-or-whole", 7, 6)),
          entry(PLUMS, "01..07", sound(1)));
  private static final List<String> FAULTS = new ArrayList<>();
  private static final Door DOOR = door();

  private FuzzedRequests() {}

  /** The first line is method and address; then headers; after an empty line the body. */
  public static void request(byte[] input) throws IOException {
    String[] parts = new String(input, StandardCharsets.UTF_8).split("\n\n", 2);
    String[] lines = parts[0].split("\n", -1);
    String[] first = lines[0].split(" ", 2);
    URI address;
    try {
      address = new URI(first.length == 2 ? first[1] : "/");
    } catch (URISyntaxException e) {
      return; // the JDK's server has turned it away
    }
    FuzzedExchange exchange =
        new FuzzedExchange(first[0], address, parts.length == 2 ? parts[1] : "");
    for (int i = 1; i < lines.length; i++) {
      String[] header = lines[i].split(":", 2);
      if (header.length == 2 && header[0].matches("[A-Za-z-]+")) {
        exchange.getRequestHeaders().add(header[0], header[1].strip().replaceAll("[\r\n]", " "));
      }
    }
    DOOR.handle(exchange);
    if (!FAULTS.isEmpty()) {
      throw new AssertionError(FAULTS.remove(0));
    }
    int status = exchange.getResponseCode();
    if (status < 200 || status >= 500) {
      throw new AssertionError("answered " + status);
    }
    boolean twoLines =
        exchange.getResponseHeaders().values().stream()
            .flatMap(List::stream)
            .anyMatch(v -> v.contains("\n") || v.contains("\r"));
    if (twoLines) {
      throw new AssertionError("a header of two lines");
    }
  }

  private static Door door() {
    Visitors visitors = new Visitors(new NoChance());
    LivePages pages =
        new LivePages(
            WordBundle.load("en"),
            new RecordPages.Manner("", Units.BOTH, f -> f.product(), r -> Optional.empty()),
            new Printer(Optional.empty()));
    Reception.Rights rights =
        new Reception.Rights(Optional.of(new Guesses(HouseholdCode.parse("12345678"))), false);
    return new Door(
        new Hosts(PORT, Set.of("pantry.lan:8080")),
        visitors,
        new Reception(new OneLot(), pages, visitors, rights),
        pages,
        () -> NOON.plusDays(1),
        FAULTS::add);
  }

  /** Marks and tokens that do not change, so that an input means the same every time. */
  private static final class NoChance extends SecureRandom {
    private static final long serialVersionUID = 1L;

    NoChance() {
      super(null, null);
    }

    @Override
    public void nextBytes(byte[] bytes) {
      Arrays.fill(bytes, (byte) 0x11);
    }
  }

  /** A household whose events are looked at as a ledger would, and forgotten. */
  private static final class OneLot implements Household {
    private static final Pantry PANTRY = Pantry.of(numbered(LEDGER), FoodTables::own);

    @Override
    public Stock stock() {
      return new Stock() {
        @Override
        public Pantry pantry() {
          return PANTRY;
        }

        @Override
        public LotRecord record(Lot lot) {
          return new LotRecord(lot, Optional.empty(), numbered(LEDGER));
        }
      };
    }

    @Override
    public void record(JarId jar, JarReport report, OffsetDateTime when, String by) {
      Jar known = PANTRY.jar(jar).orElseThrow();
      if (report.hindrance(known, when).isEmpty()) {
        report.happenings(known).forEach(what -> entry(jar, what, when));
      }
    }

    @Override
    public void record(JarId jar, Vouched vouched, OffsetDateTime when, String by) {
      entry(jar, vouched, when);
    }

    private static void entry(JarId jar, Happening what, OffsetDateTime when) {
      Entry.of(when, jar.lot(), JarNumbers.of(jar.number()), what, "").what().detail();
    }
  }
}
