package jarwright.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What the household types before anything is changed over the network: eight digits.
 *
 * @param digits without the space they are shown with
 */
public record HouseholdCode(String digits) {
  private static final int DIGITS = 8;
  private static final int CODES = 100_000_000;
  private static final Pattern FORM = Pattern.compile("\\d{" + DIGITS + "}");
  private static final Pattern BETWEEN = Pattern.compile("[\\s.-]+");

  public HouseholdCode {
    if (!FORM.matcher(digits).matches()) {
      throw new IllegalArgumentException("a household code has " + DIGITS + " digits");
    }
  }

  public static HouseholdCode draw(SecureRandom random) {
    return new HouseholdCode(
        String.format(Locale.ROOT, "%0" + DIGITS + "d", random.nextInt(CODES)));
  }

  /**
   * Reads what {@link #shown} gives.
   *
   * @throws IllegalArgumentException when there are not just eight digits
   */
  public static HouseholdCode parse(String text) {
    return new HouseholdCode(plain(text));
  }

  /** Takes as long for a nearly right code as for any other. */
  boolean is(String typed) {
    return MessageDigest.isEqual(
        digits.getBytes(StandardCharsets.UTF_8), plain(typed).getBytes(StandardCharsets.UTF_8));
  }

  private static String plain(String typed) {
    return BETWEEN.matcher(typed.strip()).replaceAll("");
  }

  /** In two groups. */
  public String shown() {
    return digits.substring(0, DIGITS / 2) + " " + digits.substring(DIGITS / 2);
  }

  /** Keeps the digits out of logs. */
  @Override
  public String toString() {
    return "household code";
  }
}
