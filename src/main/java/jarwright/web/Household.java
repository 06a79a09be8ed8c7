package jarwright.web;

import jarwright.lot.JarId;
import jarwright.pantry.JarStep;
import jarwright.problem.Refused;
import java.io.IOException;
import java.time.OffsetDateTime;

/** Where what is shown comes from, and where changes go. Used by many threads at once. */
public interface Household {
  /**
   * The stock, other programs' latest changes included.
   *
   * @throws Refused where the ledger is damaged
   * @throws IOException where it cannot be read
   */
  Stock stock() throws IOException, Refused;

  /**
   * Records what happened to a jar.
   *
   * @param by who says so; may be empty
   * @throws Refused where it cannot happen to the jar as it stands by then
   * @throws IOException where nothing was recorded
   */
  void record(JarId jar, JarStep step, OffsetDateTime when, String by) throws IOException, Refused;
}
