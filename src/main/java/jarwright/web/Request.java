package jarwright.web;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a browser asked, so far as it is looked at: path, names it called us by, its mark, and a
 * form's fields. Queries and all other headers are passed over.
 *
 * @param origin the page that a form was sent from; empty where not said
 * @param mark the browser's; empty where it has none
 * @param form field to value, control characters made spaces; empty but for a POST
 */
record Request(
    String method,
    String path,
    Optional<String> host,
    InetSocketAddress called,
    InetAddress caller,
    Optional<String> origin,
    Optional<String> site,
    String mark,
    Map<String, String> form) {
  static final String COOKIE = "jarwright";
  private static final int LONGEST_PATH = 256;
  private static final int LONGEST_FORM = 8_192;
  private static final int LONGEST_VALUE = 300;
  private static final int MOST_FIELDS = 12;
  private static final String FORM_TYPE = "application/x-www-form-urlencoded";

  /** A request that is not worth more than a status. */
  static final class Bad extends Exception {
    private static final long serialVersionUID = 1L;

    private final int status;

    Bad(int status) {
      super(String.valueOf(status), null, false, false);
      this.status = status;
    }

    int status() {
      return status;
    }
  }

  static Request of(HttpExchange exchange) throws IOException, Bad {
    Headers headers = exchange.getRequestHeaders();
    URI uri = exchange.getRequestURI();
    String path = uri.getRawPath();
    if (uri.isAbsolute() || uri.getRawAuthority() != null || path == null || path.isEmpty()) {
      throw new Bad(400);
    }
    if (path.length() > LONGEST_PATH) {
      throw new Bad(414);
    }
    String method = exchange.getRequestMethod();
    return new Request(
        method,
        path,
        single(headers, "Host"),
        exchange.getLocalAddress(),
        exchange.getRemoteAddress().getAddress(),
        single(headers, "Origin"),
        single(headers, "Sec-Fetch-Site"),
        mark(headers),
        method.equals("POST") ? form(headers, exchange.getRequestBody()) : Map.of());
  }

  /** The header's value; empty where it is missing or comes twice. */
  private static Optional<String> single(Headers headers, String name) {
    List<String> values = headers.getOrDefault(name, List.of());
    return values.size() == 1 ? Optional.of(values.get(0)) : Optional.empty();
  }

  private static String mark(Headers headers) {
    for (String line : headers.getOrDefault("Cookie", List.of())) {
      for (String cookie : line.split(";")) {
        String text = cookie.strip();
        if (text.startsWith(COOKIE + "=")) {
          String mark = text.substring(COOKIE.length() + 1);
          return Visitors.isMark(mark) ? mark : "";
        }
      }
    }
    return "";
  }

  private static Map<String, String> form(Headers headers, InputStream body)
      throws IOException, Bad {
    String type = single(headers, "Content-Type").orElse("");
    if (!type.split(";", 2)[0].strip().equalsIgnoreCase(FORM_TYPE)) {
      throw new Bad(415);
    }
    byte[] bytes = body.readNBytes(LONGEST_FORM + 1);
    if (bytes.length > LONGEST_FORM) {
      throw new Bad(413);
    }
    Map<String, String> form = new LinkedHashMap<>();
    for (String pair : new String(bytes, StandardCharsets.UTF_8).split("&")) {
      String[] parts = pair.split("=", 2);
      if ((parts.length == 2 && form.put(decoded(parts[0]), decoded(parts[1])) != null)
          || form.size() > MOST_FIELDS) {
        throw new Bad(400);
      }
    }
    return form;
  }

  private static String decoded(String text) throws Bad {
    try {
      String plain = URLDecoder.decode(text, StandardCharsets.UTF_8);
      String oneLine = plain.replaceAll("\\p{Cntrl}+", " ").strip();
      if (oneLine.length() > LONGEST_VALUE) {
        throw new Bad(413);
      }
      return oneLine;
    } catch (IllegalArgumentException e) {
      throw new Bad(400);
    }
  }

  boolean isPost() {
    return method.equals("POST");
  }

  /** A field of the form; empty where it was not sent. */
  String field(String name) {
    return form.getOrDefault(name, "");
  }
}
