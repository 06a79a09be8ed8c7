package jarwright.cli;

import jarwright.render.QrBlocks;
import jarwright.web.LocalServer;
import java.net.InetAddress;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What whoever starts the server is told: where it is, who can reach it, and the household code.
 *
 * @param own this computer's addresses in the household's network, none where it is not served
 * @param link the address in the labels' codes
 */
record ServeWelcome(
    List<InetAddress> own, int port, LocalServer.Access access, Optional<URI> link) {
  private static final int HTTP_PORT = 80;

  /**
   * @param pictured whether the address is shown as a QR code as well
   */
  List<String> lines(boolean pictured) {
    List<String> lines = new ArrayList<>();
    String address = own.isEmpty() ? at("localhost") : at(own.get(0).getHostAddress());
    lines.add("The pages are at " + address);
    if (access.lan()) {
      reach(lines);
    }
    if (pictured && !own.isEmpty()) {
      lines.addAll(QrBlocks.of(address));
    }
    String before = access.isPrivate() ? "shown or changed" : "changed";
    access
        .code()
        .ifPresent(
            c ->
                lines.add(
                    "Household code, asked for before anything is " + before + ": " + c.shown()));
    link.filter(l -> l.getScheme().equals("http") && portOf(l) != port)
        .ifPresent(
            l -> lines.add("The labels' codes lead to " + l + ", not here: --port " + portOf(l)));
    lines.add("Ctrl-C ends it.");
    return lines;
  }

  private void reach(List<String> lines) {
    if (own.isEmpty()) {
      lines.add("No network was found: phones cannot reach this computer now.");
      return;
    }
    own.stream().skip(1).forEach(o -> lines.add("  or at " + at(o.getHostAddress())));
    lines.add(
        access.isPrivate()
            ? "The connection is plain: whoever can listen in this network can read what it carries."
            : "Anybody in this network can read them, over a plain connection.");
  }

  private String at(String host) {
    return "http://" + host + ":" + port + "/";
  }

  private static int portOf(URI link) {
    return link.getPort() > 0 ? link.getPort() : HTTP_PORT;
  }
}
