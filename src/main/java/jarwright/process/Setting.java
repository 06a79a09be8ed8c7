package jarwright.process;

import jarwright.quantity.Altitude;

/** What a process is asked for. */
public record Setting(Product product, Method method, Pack pack, JarSize jar, Altitude altitude) {}
