package jarwright.quantity;

import java.util.List;

/**
 * An amount whose point may stand before decimals or between thousands: 1.500 m is one and a half
 * metres to some people and fifteen hundred to others. Only who wrote it can choose.
 */
public final class UnclearAmount extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String fault;
  private final String remedy;

  /**
   * @param written as it came in
   * @param fault why it is unclear, to follow what came in
   * @param remedy how to write what is meant
   */
  UnclearAmount(String written, String fault, String remedy) {
    super("\"" + Shown.of(written) + "\" " + fault);
    this.fault = fault;
    this.remedy = remedy;
  }

  static UnclearAmount of(String written, List<String> readings, List<String> spellings) {
    return new UnclearAmount(
        written,
        "can mean " + String.join(" or ", readings),
        "write " + String.join(" or ", spellings) + ", whichever is right");
  }

  /** Why it is unclear, to follow what came in; the file may write numbers in another way. */
  public String fault() {
    return fault;
  }

  public String remedy() {
    return remedy;
  }
}
