package jarwright.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Tells browsers apart by a random mark in a cookie. Which of them have given the household code is
 * remembered until the server stops; nothing is kept of the others, so nobody can crowd them out.
 */
final class Visitors {
  private static final int BYTES = 16;
  private static final int MOST_KNOWN = 200;
  private static final Pattern MARK = Pattern.compile("[0-9a-f]{" + 2 * BYTES + "}");

  private final SecureRandom random;
  private final byte[] secret = new byte[2 * BYTES];
  private final Set<String> known = new LinkedHashSet<>();

  Visitors(SecureRandom random) {
    this.random = random;
    random.nextBytes(secret);
  }

  String newMark() {
    byte[] mark = new byte[BYTES];
    random.nextBytes(mark);
    return HexFormat.of().formatHex(mark);
  }

  static boolean isMark(String text) {
    return MARK.matcher(text).matches();
  }

  /** What a form carries so that only pages given to this browser can send it. */
  String token(String mark) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      digest.update(secret);
      digest.update(mark.getBytes(StandardCharsets.US_ASCII));
      return HexFormat.of().formatHex(digest.digest(secret), 0, BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new LinkageError("every Java has SHA-256", e);
    }
  }

  boolean isToken(String mark, String token) {
    return isMark(mark)
        && MessageDigest.isEqual(
            token(mark).getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
  }

  /** A new mark for a browser that gave the code: one known before it could have been planted. */
  synchronized String welcome() {
    if (known.size() >= MOST_KNOWN) {
      known.remove(known.iterator().next());
    }
    String mark = newMark();
    known.add(mark);
    return mark;
  }

  synchronized boolean isKnown(String mark) {
    return known.contains(mark);
  }
}
