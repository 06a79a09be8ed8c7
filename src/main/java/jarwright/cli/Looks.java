package jarwright.cli;

import jarwright.page.Wording;
import jarwright.pantry.Sign;
import jarwright.problem.Refused;
import java.io.IOException;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.cli.Option;

/** What somebody saw who looked jars over: sign by sign, never in a sentence. */
final class Looks {
  static final String LOOKED = "looked-at";
  static final String SEEN = "seen";
  private static final String FORM = "none, or what you saw of " + String.join(", ", Sign.words());

  private Looks() {}

  /** For jars in doubt; without a value the signs are asked one by one. */
  static Option option() {
    return Option.builder()
        .longOpt(LOOKED)
        .hasArg()
        .optionalArg(true)
        .argName("SIGNS")
        .desc("you looked over jars in doubt: " + FORM + "; asks if left out")
        .get();
  }

  /** For jars that are thrown away. */
  static Option seenOption() {
    return CommonOptions.withValue(null, SEEN, "SIGNS", "signs of spoilage: " + FORM);
  }

  /**
   * The signs that were seen; empty where the option is not there.
   *
   * @throws Usage where it is no list of signs, or nobody can be asked
   */
  static Optional<Set<Sign>> of(Call call, String option, Wording words)
      throws Usage, Refused, IOException {
    if (!call.has(option)) {
      return Optional.empty();
    }
    Optional<String> told = call.value(option);
    if (told.isEmpty()) {
      return Optional.of(asked(call, words));
    }
    try {
      return Optional.of(Sign.parse(told.get()));
    } catch (IllegalArgumentException e) {
      throw new Usage("--" + option + " takes " + FORM + ": " + e.getMessage());
    }
  }

  private static Set<Sign> asked(Call call, Wording words) throws Usage, Refused, IOException {
    Optional<Keyboard> keyboard = Keyboard.of(call);
    if (keyboard.isEmpty()) {
      throw new Usage("--" + LOOKED + " takes " + FORM);
    }
    Set<Sign> seen = EnumSet.noneOf(Sign.class);
    for (Sign sign : Sign.values()) {
      if (keyboard.get().confirm(words.text("says.ask." + sign.word()))) {
        seen.add(sign);
      }
    }
    return seen;
  }
}
