package jarwright.web;

import jarwright.lot.JarId;
import jarwright.pantry.JarReport;
import jarwright.pantry.Vouched;
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
   * Records what is reported of a jar.
   *
   * @param by who says so; may be empty
   * @throws Refused where it must not happen to the jar as it stands by then
   * @throws IOException where nothing was recorded
   */
  void record(JarId jar, JarReport report, OffsetDateTime when, String by)
      throws IOException, Refused;

  /**
   * Records that somebody vouches for the lot of a jar.
   *
   * @param by who says so; may be empty
   * @throws Refused where no word makes it safe, or its process is on record
   * @throws IOException where nothing was recorded
   */
  void record(JarId jar, Vouched vouched, OffsetDateTime when, String by)
      throws IOException, Refused;
}
