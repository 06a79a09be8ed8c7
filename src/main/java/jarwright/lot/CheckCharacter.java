package jarwright.lot;

/**
 * The check character of ISO 7064 MOD 37,36 (hybrid system) over digits and capital letters. It
 * finds every single wrong character and nearly all swaps of neighbours.
 */
final class CheckCharacter {
  private static final String CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
  private static final int M = 36;

  private CheckCharacter() {}

  /** The character that completes the given ones. */
  static char of(String characters) {
    int product = M;
    for (int i = 0; i < characters.length(); i++) {
      product = next(product, characters.charAt(i));
    }
    return CHARACTERS.charAt((M + 1 - product) % M);
  }

  static boolean completes(String characters, char check) {
    return CHARACTERS.indexOf(check) >= 0 && of(characters) == check;
  }

  private static int next(int product, char character) {
    int value = CHARACTERS.indexOf(character);
    if (value < 0) {
      throw new MistypedCode("'" + character + "' is not a digit or capital letter");
    }
    int sum = (product + value) % M;
    return (sum == 0 ? M : sum) * 2 % (M + 1);
  }
}
