package jarwright.day;

import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.quantity.GaugePressure;
import jarwright.quantity.MeasuredText;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The bundle's words and figures of the steps, in one household's units. */
final class StepWords {
  private final Wording words;
  private final Units units;

  StepWords(Wording words, Units units) {
    this.words = words;
    this.units = units;
  }

  String text(String key) {
    return words.text(key);
  }

  String text(String key, Map<String, ?> values) {
    return words.text(key, values);
  }

  /** A line of the bundle; values may be amounts in braces. */
  Line line(String key, Map<String, ?> values) {
    return line(MeasuredText.parse(words.text(key, values)), Map.of());
  }

  Line line(MeasuredText text, Map<String, String> names) {
    return new Line(text.runs(style(), names));
  }

  Figure figure(Function<Style, String> amount) {
    return Figure.of(units, words, amount);
  }

  /** A figure worded by the bundle, amounts in braces. */
  Figure figure(String key) {
    return figure(MeasuredText.parse(words.text(key)));
  }

  /** Big what the gauge shows, in whatever units the household reads. */
  Figure pressure(GaugePressure pressure) {
    Style style = style();
    return new Figure(pressure.psi(style), units == Units.US ? "" : pressure.kilopascals(style));
  }

  Figure minutes(int minutes) {
    return Figure.of(words.text("figure.minutes", Map.of("n", minutes)));
  }

  /** The caution of that key, where there is one. */
  Optional<Caution> caution(String key) {
    return words.has("caution." + key)
        ? Optional.of(new Caution(line("caution." + key, Map.of()).text()))
        : Optional.empty();
  }

  /** A stretch of so many hours. */
  Figure hours(Duration least, Duration most) {
    return figure(MeasuredText.parse("{" + least.toHours() + ".." + most.toHours() + " h}"));
  }

  private Figure figure(MeasuredText text) {
    return figure(style -> text.text(style, Map.of()));
  }

  Style style() {
    return style(units);
  }

  Style style(Units shown) {
    return UnitWords.style(shown, words);
  }
}
