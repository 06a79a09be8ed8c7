package jarwright.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PotsTest {
  private static final Pots POTS =
      new Pots(
          List.of(
              named("en", "pressure cooker", "cooker"),
              named("en", "electric cooker", "electric"),
              named("en", "electric pressure cooker", "electric"),
              named("en", "oven", "oven"),
              named("en", "pressure cooker canner", ""),
              named("en", "dutch oven", ""),
              named("es", "olla exprés", "cooker")));

  private static Pots.Named named(String language, String name, String refusal) {
    return new Pots.Named(language, name, Optional.of(refusal).filter(r -> !r.isEmpty()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          pressure cooker                    | cooker
          Grandma's old PRESSURE-COOKERS (2) | cooker
          Olla Expres azul                   | cooker
          electric pressure cooker           | electric
          electric pressure cooker canner    | electric
          toaster ovens                      | oven
          the pressure cooker/canner         | ''
          pressure canner                    | ''
          dutch oven                         | ''
          dutch oven in the oven             | oven
          covenant pot                       | ''
          big pot                            | ''
          """)
  void aNameAmongOtherWordsIsFoundUnlessItIsPartOfALongerOne(String text, String refusal) {
    assertEquals(refusal, POTS.refusal(text).orElse(""));
  }
}
