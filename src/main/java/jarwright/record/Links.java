package jarwright.record;

import jarwright.lot.LotCode;
import jarwright.pantry.Jar;
import java.util.Optional;

/** Where pages lie, as seen from the page that links to them. */
public interface Links {
  String index();

  String lot(LotCode lot);

  /** Empty where jars have no pages of their own. */
  Optional<String> jar(Jar jar);
}
