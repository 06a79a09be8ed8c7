package jarwright.web;

import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.UnknownHostException;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The names under which the server lets itself be called. A page of somebody else's whose name was
 * made to lead here is turned away by the name it still carries.
 */
final class Hosts {
  private static final Pattern IPV4 = Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}");
  private static final Pattern IPV6 = Pattern.compile("\\[[0-9A-Fa-f:.]+]");
  private static final int HTTP_PORT = 80;

  private final Set<String> names;
  private final int port;

  /**
   * @param more other names with their ports, as {@code pantry.lan:8080}
   */
  Hosts(int port, Set<String> more) {
    this.port = port;
    Set<String> all = new LinkedHashSet<>(Set.of("localhost:" + port));
    more.forEach(name -> all.add(withPort(name)));
    this.names = Set.copyOf(all);
  }

  /**
   * Whether a request may carry this name.
   *
   * @param host the Host header
   * @param called the own address that the request came to
   */
  boolean isOurs(String host, InetSocketAddress called) {
    if (host.length() > 255) {
      return false;
    }
    String name = withPort(host);
    if (names.contains(name)) {
      return true;
    }
    int colon = name.lastIndexOf(':');
    return name.substring(colon + 1).equals(String.valueOf(port))
        && isAddress(name.substring(0, colon), called.getAddress());
  }

  /** Only what is an address already is looked at, so that no name is ever looked up. */
  private static boolean isAddress(String name, InetAddress own) {
    if (!IPV4.matcher(name).matches() && !IPV6.matcher(name).matches()) {
      return false;
    }
    try {
      return InetAddress.getByName(name).equals(own);
    } catch (UnknownHostException e) {
      return false;
    }
  }

  private static String withPort(String host) {
    String name = host.strip().toLowerCase(Locale.ROOT);
    boolean hasPort = name.lastIndexOf(':') > name.lastIndexOf(']');
    return hasPort ? name : name + ":" + HTTP_PORT;
  }
}
