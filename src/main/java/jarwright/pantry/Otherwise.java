package jarwright.pantry;

import jarwright.problem.Nearest;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What rarely goes otherwise than the sheet says, and what is rarely seen when seals are tested.
 */
public enum Otherwise {
  /** The pressure canner was cooled with water, or opened or vented before it stood at zero. */
  FORCED_COOLING(Finding.COOLING_FORCED, Scope.PRESSURE),
  /** The boiling water fell below the jars' lids. */
  UNCOVERED(Finding.LIDS_UNCOVERED, Scope.BOILING_WATER),
  LARGER_JAR(Finding.JAR_LARGER, Scope.ANY_JARS),
  /** Raw where the sheet says hot, or hot where it says raw. */
  OTHER_PACK(Finding.PACKED_OTHERWISE, Scope.ANY_JARS),
  /** Less of what the sheet marks, more or other vegetables, or a thickener. */
  RECIPE(Finding.RECIPE_CHANGED, Scope.ANY_JARS),
  LEAKS(Finding.LEAKS, Sign.LEAKS),
  BULGES(Finding.BULGES, Sign.BULGES),
  SPURTS(Finding.SPURTS, Sign.SPURTS),
  SMELL(Finding.SMELL, Sign.SMELL),
  MOLD(Finding.MOLD, Sign.MOLD),
  COLOR(Finding.COLOR, Sign.COLOR);

  /** Of what it can be said. */
  private enum Scope {
    PRESSURE,
    BOILING_WATER,
    ANY_JARS,
    SIGN
  }

  private final Finding finding;
  private final Scope scope;
  private final Optional<Sign> sign;

  Otherwise(Finding finding, Scope scope) {
    this.finding = finding;
    this.scope = scope;
    this.sign = Optional.empty();
  }

  Otherwise(Finding finding, Sign sign) {
    this.finding = finding;
    this.scope = Scope.SIGN;
    this.sign = Optional.of(sign);
  }

  Finding finding() {
    return finding;
  }

  /** Whether it is seen of a single jar when seals are tested. */
  public boolean isSign() {
    return scope == Scope.SIGN;
  }

  /** Whether it can be said of single jars; else of the load alone. */
  public boolean isOfJars() {
    return scope == Scope.ANY_JARS || scope == Scope.SIGN;
  }

  /** Empty for what is not seen on a jar. */
  public Optional<Sign> sign() {
    return sign;
  }

  /** Whether it can happen to a load of the given process. */
  public boolean isPossible(Required required) {
    return switch (scope) {
      case PRESSURE -> required.pressure().isPresent();
      case BOILING_WATER -> required.pressure().isEmpty();
      case ANY_JARS, SIGN -> true;
    };
  }

  /** As in {@code forced-cooling}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Reads {@link #word}, and the other forms of a sign.
   *
   * @throws IllegalArgumentException naming the text and the words there are
   */
  static Otherwise parse(String word) {
    return Arrays.stream(values())
        .filter(o -> o.word().equals(word) || o.sign.filter(s -> s.isCalled(word)).isPresent())
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\""
                        + Shown.of(word)
                        + "\" is none of the words; "
                        + Nearest.remedy(
                            word, Arrays.stream(values()).map(Otherwise::word).toList())));
  }
}
