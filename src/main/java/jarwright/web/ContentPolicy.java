package jarwright.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * The Content-Security-Policy of all pages: their one style and one script by hash, forms to this
 * server, nothing else. The hashes are taken from a page that shows nothing of the household's, so
 * that no text of a plan can get itself allowed.
 */
final class ContentPolicy {
  private ContentPolicy() {}

  /**
   * @param page one that has the style and the script, and nothing of the household's
   */
  static String of(byte[] page) {
    String html = new String(page, StandardCharsets.UTF_8);
    return "default-src 'none'; style-src "
        + hash(html, "style")
        + "; script-src "
        + hash(html, "script")
        + "; img-src data:; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
  }

  private static String hash(String html, String element) {
    int start = html.indexOf("<" + element + ">");
    int end = html.indexOf("</" + element + ">", start);
    if (start < 0 || end < 0) {
      return "'none'";
    }
    byte[] text =
        html.substring(start + element.length() + 2, end).getBytes(StandardCharsets.UTF_8);
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(text);
      return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new LinkageError("every Java has SHA-256", e);
    }
  }
}
