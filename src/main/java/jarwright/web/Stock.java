package jarwright.web;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import jarwright.pantry.Jar;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.problem.Refused;
import jarwright.record.LotRecord;
import java.io.IOException;
import java.util.Optional;

/** What the household's files hold at one moment. */
public interface Stock {
  Pantry pantry();

  /**
   * All that is known of a lot of the pantry.
   *
   * @throws Refused where its batch record is damaged
   * @throws IOException where that cannot be read
   */
  LotRecord record(Lot lot) throws IOException, Refused;

  default Optional<Lot> lot(LotCode code) {
    return pantry().lot(code);
  }

  default Optional<Jar> jar(JarId id) {
    return pantry().jar(id);
  }
}
