package jarwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.net.URLEncoder;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What a browser does with the server's pages: keeps the cookie, sends the forms' own tokens. */
final class Browser {
  private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([0-9a-f]+)\"");
  private static final Pattern COOKIE = Pattern.compile("(?i)set-cookie: (jarwright=[0-9a-f]+)");

  private final ServedHome home;
  private String cookie = "";
  private String token = "";

  Browser(ServedHome home) {
    this.home = home;
  }

  String get(String path) throws IOException {
    return keep(
        home.raw(
            "GET " + path + " HTTP/1.1",
            "Host: localhost:" + home.port(),
            "Cookie: " + cookie,
            "Connection: close"));
  }

  /** A form of the last page, sent from an own page. */
  String post(String path, Map<String, String> fields) throws IOException {
    return post(path, fields, token, home.address());
  }

  String post(String path, Map<String, String> fields, String withToken, String origin)
      throws IOException {
    String form =
        "token="
            + withToken
            + fields.entrySet().stream()
                .map(f -> "&" + f.getKey() + "=" + URLEncoder.encode(f.getValue(), UTF_8))
                .collect(Collectors.joining());
    return keep(
        home.raw(
            "POST " + path + " HTTP/1.1",
            "Host: localhost:" + home.port(),
            "Origin: " + origin,
            "Cookie: " + cookie,
            "Content-Type: application/x-www-form-urlencoded",
            "Content-Length: " + form.length(),
            "Connection: close",
            "",
            form));
  }

  String token() {
    return token;
  }

  private String keep(String answer) {
    Matcher set = COOKIE.matcher(answer);
    if (set.find()) {
      cookie = set.group(1);
    }
    Matcher given = TOKEN.matcher(answer);
    if (given.find()) {
      token = given.group(1);
    }
    return answer;
  }
}
