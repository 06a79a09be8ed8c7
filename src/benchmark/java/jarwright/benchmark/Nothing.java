package jarwright.benchmark;

/** What an empty JVM costs: the floor of every start. */
final class Nothing {
  private Nothing() {}

  public static void main(String[] args) {}
}
