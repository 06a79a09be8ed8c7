package jarwright.web;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is sent back.
 *
 * @param more headers besides those that every answer has
 */
@SuppressWarnings("ArrayRecordComponent") // bytes on their way out, never compared
record Answer(int status, byte[] body, Map<String, String> more) {
  static Answer page(int status, byte[] body) {
    return new Answer(status, body, Map.of());
  }

  /** A few words without a page, for what no browser of the household asks. */
  static Answer bare(int status) {
    return new Answer(
        status,
        (status + "\n").getBytes(StandardCharsets.US_ASCII),
        Map.of("Content-Type", "text/plain; charset=utf-8", "Connection", "close"));
  }

  /** Sends a browser on after a form, so that going back sends nothing twice. */
  static Answer seeOther(String path) {
    return new Answer(303, new byte[0], Map.of("Location", path));
  }

  Answer with(String header, String value) {
    Map<String, String> all = new LinkedHashMap<>(more);
    all.put(header, value);
    return new Answer(status, body, all);
  }

  /**
   * Sends it and ends the exchange.
   *
   * @param policy what a browser may load into the page
   */
  void send(HttpExchange exchange, String policy) throws IOException {
    Headers headers = exchange.getResponseHeaders();
    headers.set("Content-Type", "text/html; charset=utf-8");
    headers.set("Content-Security-Policy", policy);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("X-Frame-Options", "DENY");
    // Not no-referrer: that would also take the origin from forms, which is checked.
    headers.set("Referrer-Policy", "same-origin");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Permissions-Policy", "camera=(), geolocation=(), microphone=()");
    headers.set("Cache-Control", "no-store");
    more.forEach(headers::set);
    boolean headOnly = exchange.getRequestMethod().equals("HEAD");
    if (headOnly) {
      headers.set("Content-Length", String.valueOf(body.length));
    }
    exchange.sendResponseHeaders(status, headOnly || body.length == 0 ? -1 : body.length);
    if (!headOnly && body.length > 0) {
      try (OutputStream out = exchange.getResponseBody()) {
        out.write(body);
      }
    }
  }
}
