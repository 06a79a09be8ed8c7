package jarwright.web;

import java.net.DatagramSocket;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The household's own network, as far as addresses tell it from the rest of the world. */
public final class Neighbourhood {
  private static final int UNIQUE_LOCAL = 0xFC;

  private Neighbourhood() {}

  /** Whether a caller is this computer, or has an address that only private networks have. */
  static boolean holds(InetAddress caller) {
    boolean uniqueLocal =
        caller.getAddress().length == 16 && (caller.getAddress()[0] & 0xFE) == UNIQUE_LOCAL;
    return caller.isLoopbackAddress()
        || caller.isSiteLocalAddress()
        || caller.isLinkLocalAddress()
        || uniqueLocal;
  }

  /**
   * This computer's addresses in the household's network, the one that phones most likely reach
   * first; none where there is no network.
   */
  public static List<InetAddress> ownAddresses() {
    Set<InetAddress> own = new LinkedHashSet<>();
    mainAddress().filter(Neighbourhood::isOffered).ifPresent(own::add);
    try {
      for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
        if (card.isUp() && !card.isLoopback() && !card.isVirtual()) {
          Collections.list(card.getInetAddresses()).stream()
              .filter(Neighbourhood::isOffered)
              .forEach(own::add);
        }
      }
    } catch (SocketException e) {
      return List.copyOf(own);
    }
    return List.copyOf(own);
  }

  private static boolean isOffered(InetAddress address) {
    return address instanceof Inet4Address && address.isSiteLocalAddress();
  }

  /** The address that packets to the outside would carry; none is sent. RFC 5737 names the goal. */
  private static Optional<InetAddress> mainAddress() {
    try (DatagramSocket socket = new DatagramSocket()) {
      socket.connect(new InetSocketAddress("192.0.2.1", 9));
      return Optional.of(socket.getLocalAddress());
    } catch (SocketException | java.io.UncheckedIOException e) {
      return Optional.empty();
    }
  }
}
