package jarwright.pantry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SortedSet;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class HappeningProperties {
  @Provide
  Arbitrary<Happening> happenings() {
    return AnyHappening.any();
  }

  @Provide
  Arbitrary<SortedSet<Integer>> numbers() {
    return Arbitraries.integers().between(1, 300).set().ofMaxSize(40).map(TreeSet::new);
  }

  @Provide
  Arbitrary<String> texts() {
    return AnyHappening.text();
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void everyHappeningIsReadBackAsItWas(@ForAll("happenings") Happening happening) {
    Detail detail = Detail.parse(happening.detail().toString());
    assertEquals(happening, Happening.read(happening.kind(), detail));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void everyDetailIsReadBackAsItWas(
      @ForAll("texts") String one, @ForAll("texts") String two, @ForAll("texts") String three) {
    Detail detail = Detail.of("a", one).with("b-c", two).with("d", three);
    assertEquals(detail, Detail.parse(detail.toString()));
    assertEquals(one, Detail.parse(detail.toString()).text("a"));
    assertEquals(two, Detail.parse(detail.toString()).text("b-c"));
  }

  /** Any text at all is a detail or is refused with a sentence. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void noTextBreaksTheReader(@ForAll("texts") String text) {
    try {
      assertEquals(text, Detail.parse(text).toString().isEmpty() ? "" : text);
    } catch (IllegalArgumentException e) {
      assertEquals(false, e.getMessage().isBlank());
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void jarNumbersAreReadBackAsTheyWere(@ForAll("numbers") SortedSet<Integer> numbers) {
    JarNumbers jars = JarNumbers.of(numbers);
    assertEquals(jars, JarNumbers.parse(jars.toString()));
    assertEquals(numbers.stream().toList(), jars.stream().boxed().toList());
    assertEquals(numbers.size(), jars.size());
  }

  @Example
  void jarNumbersAreReadAsPeopleWriteThem() {
    assertEquals("01..07 09", JarNumbers.parse("1-7, 9").toString());
    assertEquals("01..07 09", JarNumbers.parse(" 9;1 – 7 ").toString());
    assertEquals("03 04", JarNumbers.parse("04+03").toString());
    assertEquals("", JarNumbers.parse("None").toString());
    assertEquals(100, JarNumbers.parse("1..100").size());
    for (String wrong : new String[] {"seven", "7-1", "1,,x", "100000", "1-", "-3"}) {
      assertThrows(IllegalArgumentException.class, () -> JarNumbers.parse(wrong), wrong);
    }
  }
}
