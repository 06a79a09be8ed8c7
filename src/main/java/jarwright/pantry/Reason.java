package jarwright.pantry;

import java.time.OffsetDateTime;

/** Why a jar shows what it shows. */
public sealed interface Reason {

  /** What lasts of a finding on this very jar: whatever comes after, it is not eaten. */
  sealed interface Harm extends Reason permits FoundSpoiled, TurnedUp {}

  /** It was itself found spoiled, or a sign of spoilage was seen on it. */
  record FoundSpoiled(OffsetDateTime since, Spoiled what) implements Harm {}

  /** It had been given up, or had left the house, and turned up again. */
  record TurnedUp(OffsetDateTime since) implements Harm {}

  /** Another jar of its lot was spoiled. */
  record OfLot(Doubt doubt) implements Reason {}

  /** Where it comes from. */
  record From(Origin origin) implements Reason {}

  /** It was to be canned again, or eaten from the refrigerator, by a time that is over. */
  record Late(Standing before) implements Reason {}

  /** How it came out of the canner. */
  record CameOut(Outcome outcome) implements Reason {}

  /** It was thrown away. */
  record ThrownAway(Standing.Tossed tossed) implements Reason {}

  /** Its lot was found spoiled once, and somebody took that back. */
  record Withdrawn(OffsetDateTime since, OffsetDateTime takenBack, String why) implements Reason {}
}
