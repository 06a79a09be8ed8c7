package jarwright.pantry;

/**
 * Something odd in the ledger that does not stop it from being read.
 *
 * @param event number of the event
 * @param what what is odd and what was made of it; no full stop
 */
public record Remark(long event, String what) {
  @Override
  public String toString() {
    return "event " + event + ": " + what;
  }
}
