package jarwright.files;

import jarwright.ask.Said;
import jarwright.ask.Untested;
import jarwright.problem.Refused;
import jarwright.process.JarSize;
import jarwright.quantity.Fraction;
import jarwright.quantity.Rounding;
import jarwright.quantity.UnclearAmount;
import jarwright.quantity.Volume;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Understands the jar of a plan: a size of the tables, what households call it, or its content. A
 * size that is not in the tables has no tested time, whatever it is near to.
 */
final class JarWord {
  private static final Pattern CONTENT =
      Pattern.compile(
          "(\\d[\\d.,/ -]*?)[ -]*(fl\\.?[ -]?oz|\\p{L}+)\\.?(?:[ -](?:mason["
              + " -])?(?:jars?|frascos?))?");

  /** What jars are also marked with. */
  private static final Map<String, Volume.Unit> ALSO =
      Map.ofEntries(
          Map.entry("oz", Volume.Unit.FL_OZ),
          Map.entry("ounce", Volume.Unit.FL_OZ),
          Map.entry("ounces", Volume.Unit.FL_OZ),
          Map.entry("floz", Volume.Unit.FL_OZ),
          Map.entry("fl. oz", Volume.Unit.FL_OZ),
          Map.entry("onza", Volume.Unit.FL_OZ),
          Map.entry("onzas", Volume.Unit.FL_OZ),
          Map.entry("cc", Volume.Unit.ML),
          Map.entry("mililitro", Volume.Unit.ML),
          Map.entry("mililitros", Volume.Unit.ML),
          Map.entry("litro", Volume.Unit.L),
          Map.entry("litros", Volume.Unit.L),
          Map.entry("pts", Volume.Unit.PINT),
          Map.entry("pinta", Volume.Unit.PINT),
          Map.entry("pintas", Volume.Unit.PINT),
          Map.entry("qts", Volume.Unit.QUART));

  private static final JarSize SMALLEST = JarSize.HALF_PINT;

  /** Units that are sizes too, so that a number before them may count jars. */
  private static final Map<Volume.Unit, JarSize> SIZES =
      Map.of(Volume.Unit.PINT, JarSize.PINT, Volume.Unit.QUART, JarSize.QUART);

  private final PlanWords words;

  JarWord(PlanWords words) {
    this.words = words;
  }

  /** The size that the key names; none, or a problem, otherwise. */
  Optional<JarSize> read(Fields fields, String key) throws IOException, Refused {
    Optional<String> text = fields.text(key);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Optional<JarSize> exact = PlanWords.exact(text.get(), JarSize::named, JarSize.ids());
    if (exact.isPresent()) {
      return exact;
    }
    Matcher content = CONTENT.matcher(text.get());
    return content.matches() && unit(content.group(2)).isPresent()
        ? ofContent(fields, key, content)
        : named(fields, key, text.get());
  }

  private static Optional<Volume.Unit> unit(String written) {
    return Optional.ofNullable(ALSO.get(written.toLowerCase(Locale.ROOT)))
        .or(() -> Volume.Unit.named(written));
  }

  private Optional<JarSize> named(Fields fields, String key, String text)
      throws IOException, Refused {
    Optional<Said> said = words.hear(text);
    Optional<Untested> untested = said.flatMap(Said::untestedJar);
    List<String> meant =
        said.filter(s -> s.methods().isEmpty() && s.pack().isEmpty())
            .map(s -> s.choices().jars().stream().map(JarSize::id).distinct().toList())
            .orElse(List.of());
    if (meant.isEmpty() && untested.isPresent()) {
      fields.problem(key, CannerWord.reason(untested.get()), untested.get().remedy());
      return Optional.empty();
    }
    if (!meant.isEmpty() && said.get().choices().counted()) {
      tellCounted(fields, key, meant.get(0));
      return Optional.empty();
    }
    return PlanWords.one(fields, key, meant, JarSize.ids()).flatMap(JarSize::named);
  }

  private static void tellCounted(Fields fields, String key, String size) {
    fields.problem(
        key,
        "\"" + fields.said(key) + "\" can mean a size or how many jars there are",
        "write " + key + ": " + size + ", and how many under jars:");
  }

  private Optional<JarSize> ofContent(Fields fields, String key, Matcher content) {
    Volume.Unit unit = unit(content.group(2)).orElseThrow();
    String number = content.group(1).strip();
    try {
      Volume volume = Volume.parse(number + " " + unit.spellings().get(0));
      boolean many = volume.amount().isWhole() && volume.amount().compareTo(Fraction.ONE) > 0;
      if (SIZES.containsKey(unit) && many) {
        tellCounted(fields, key, SIZES.get(unit).id());
        return Optional.empty();
      }
      Optional<JarSize> size =
          Stream.of(JarSize.values()).filter(j -> j.volume().compareTo(volume) == 0).findFirst();
      if (size.isEmpty()) {
        tellNoSize(fields, key, volume);
      }
      return size;
    } catch (UnclearAmount e) {
      fields.problem(key, "\"" + fields.said(key) + "\" " + e.fault(), e.remedy());
    } catch (IllegalArgumentException e) {
      fields.problem(key, e.getMessage(), "write it like " + key + ": pint");
    }
    return Optional.empty();
  }

  /** Times hold for the sizes that were tested: AIB 539 (2015) Guide 1. */
  private static void tellNoSize(Fields fields, String key, Volume volume) {
    Optional<JarSize> smaller = JarSize.below(volume);
    String why =
        smaller
            .map(
                j ->
                    "holds more than a "
                        + j
                        + " jar ("
                        + shown(j)
                        + "), and a larger jar heats through more slowly; times are tested for the"
                        + " sizes of the tables alone (AIB 539 Guide 1)")
            .orElse(
                "is smaller than the smallest jar that times are tested for, a "
                    + SMALLEST
                    + " (AIB 539 Guide 1)");
    fields.problem(
        key,
        "a jar of " + fields.said(key) + " " + why,
        "use "
            + smaller.map(JarWord::usual).orElse(SMALLEST)
            + " jars, or another size of the tables");
  }

  /** Hardly anything is tested in half-gallon jars. */
  private static JarSize usual(JarSize jar) {
    return jar == JarSize.HALF_GALLON ? JarSize.QUART : jar;
  }

  private static String shown(JarSize jar) {
    Fraction millilitres = Rounding.NEAREST.toStep(jar.volume().inMillilitres(), Fraction.ONE);
    return jar.volume().in(Volume.Unit.FL_OZ) + " fl oz, " + millilitres + " mL";
  }
}
