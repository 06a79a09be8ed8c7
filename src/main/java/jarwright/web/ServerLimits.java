package jarwright.web;

/**
 * Limits of the JDK's server, which it takes from system properties, once, when it is first used. A
 * property that was set on the command line stays.
 */
final class ServerLimits {
  /** A thread for each, so that slow callers keep nobody waiting. */
  static final int CONNECTIONS = 256;

  private static final int SECONDS_TO_ASK = 10;
  private static final int SECONDS_TO_TAKE = 30;
  private static final int SECONDS_IDLE = 15;
  private static final int HEADERS = 60;
  private static final int HEADER_BYTES = 16_384;

  private ServerLimits() {}

  static void set() {
    set("jdk.httpserver.maxConnections", CONNECTIONS);
    set("sun.net.httpserver.maxIdleConnections", CONNECTIONS / 4);
    set("sun.net.httpserver.idleInterval", SECONDS_IDLE);
    set("sun.net.httpserver.maxReqTime", SECONDS_TO_ASK);
    set("sun.net.httpserver.maxRspTime", SECONDS_TO_TAKE);
    set("sun.net.httpserver.maxReqHeaders", HEADERS);
    set("sun.net.httpserver.maxReqHeaderSize", HEADER_BYTES);
    set("sun.net.httpserver.nodelay", true);
  }

  private static void set(String property, Object value) {
    if (System.getProperty(property) == null) {
      System.setProperty(property, value.toString());
    }
  }
}
