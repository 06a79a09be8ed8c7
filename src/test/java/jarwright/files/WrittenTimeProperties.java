package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Times are read as java.time reads them. */
class WrittenTimeProperties {
  @Provide
  Arbitrary<OffsetDateTime> times() {
    Arbitrary<Integer> nano =
        Arbitraries.oneOf(
            Arbitraries.of(0, 500_000_000, 7_000_000, 1_000, 1),
            Arbitraries.integers().between(0, 999_999_999));
    return Combinators.combine(
            Arbitraries.longs().between(-3_000_000_000L, 20_000_000_000L),
            nano,
            Arbitraries.of(0, 3_600, -18_000, 20_700, 64_800, -64_800, 1_234),
            Arbitraries.of(1, 60, 3_600))
        .as(
            (second, n, offset, step) ->
                Instant.ofEpochSecond(second / step * step, step == 1 ? n : 0)
                    .atOffset(ZoneOffset.ofTotalSeconds(offset)));
  }

  @Property(tries = 5_000)
  void whatIsWrittenIsReadAsItWas(@ForAll("times") OffsetDateTime time) {
    assertEquals(time, new WrittenTime().read(time.toString()));
  }

  @Property(tries = 3_000)
  void anyOtherTextIsWhatTheLibrarySays(@ForAll("bent") String text) {
    WrittenTime times = new WrittenTime();
    try {
      assertEquals(OffsetDateTime.parse(text), times.read(text));
    } catch (DateTimeException e) {
      assertThrows(DateTimeException.class, () -> times.read(text), text);
    }
  }

  @Provide
  Arbitrary<String> bent() {
    return Combinators.combine(
            times(),
            Arbitraries.integers().between(0, 30),
            Arbitraries.of("", "0", "T", "-", ":", "Z", ".", "+", " ", "9"),
            Arbitraries.integers().between(0, 2))
        .as(
            (time, at, put, gone) -> {
              String text = time.toString();
              int from = Math.min(at, text.length());
              return text.substring(0, from)
                  + put
                  + text.substring(Math.min(text.length(), from + gone));
            });
  }

  @Example
  void noTimeIsRefused() {
    for (String text : List.of("", "Z", "2026-08-24", "2026-13-24T12:00Z", "2026-08-24T12:0Z")) {
      assertThrows(DateTimeException.class, () -> new WrittenTime().read(text), text);
    }
  }
}
