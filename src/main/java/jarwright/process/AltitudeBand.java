package jarwright.process;

import java.util.OptionalInt;

/**
 * A band of altitude as a table prints it, in whole feet, both ends inside.
 *
 * @param fromFeet lowest foot; the band that starts at 0 also holds land below the sea
 * @param toFeet highest foot; empty where the table prints "above"
 */
public record AltitudeBand(int fromFeet, OptionalInt toFeet) implements Comparable<AltitudeBand> {
  public AltitudeBand {
    if (fromFeet < 0 || toFeet.orElse(Integer.MAX_VALUE) <= fromFeet) {
      throw new IllegalArgumentException("a band runs upwards from 0 ft or more");
    }
  }

  /** By hand, as {@link #hashCode}: at every start, what Java makes for a record costs more. */
  @Override
  public boolean equals(Object other) {
    return other instanceof AltitudeBand that
        && fromFeet == that.fromFeet
        && toFeet.equals(that.toFeet);
  }

  @Override
  public int hashCode() {
    return fromFeet * 31 + toFeet.hashCode();
  }

  public boolean holds(int feet) {
    boolean reached = feet >= fromFeet || fromFeet == 0;
    return reached && (toFeet.isEmpty() || feet <= toFeet.getAsInt());
  }

  /** Whether the given band starts on the foot after this one. */
  public boolean isFollowedBy(AltitudeBand next) {
    return toFeet.isPresent() && next.fromFeet == toFeet.getAsInt() + 1;
  }

  @Override
  public int compareTo(AltitudeBand other) {
    return Integer.compare(fromFeet, other.fromFeet);
  }
}
