package jarwright.files;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The check at the end of each line, as in {@code 3f9c21-0a1b2c3d4e5f6071}: the household's mark,
 * then 64 bits of a SHA-256 over the check of the line before and the text of this line. It finds
 * what was torn, mistyped or mixed up; it is no seal against someone who means to forge.
 */
final class LedgerChain {
  static final int MARK_LENGTH = 6;
  static final int LENGTH = MARK_LENGTH + 1 + 16;

  private static final int CHECK_BYTES = 8;

  private final MessageDigest sha = sha256();

  /** The check of a line without its own check, given the check of the line before. */
  String check(String mark, String before, byte[] text, int length) {
    sha.update(before.getBytes(StandardCharsets.US_ASCII));
    sha.update((byte) '\n');
    sha.update(text, 0, length);
    return mark + "-" + HexFormat.of().formatHex(sha.digest(), 0, CHECK_BYTES);
  }

  static String mark(String household) {
    return household.substring(0, MARK_LENGTH);
  }

  static boolean looksLikeCheck(String text) {
    if (text.length() != LENGTH || text.charAt(MARK_LENGTH) != '-') {
      return false;
    }
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean digit = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
      if (i != MARK_LENGTH && !digit) {
        return false;
      }
    }
    return true;
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
