package jarwright.record;

import java.util.Locale;

/** How urgent a page's large words are, the most urgent first. */
public enum Tone {
  /** Not to be eaten. */
  STOP,
  /** Something is to be done before a certain time. */
  COLD,
  /** Nothing vouches for it. */
  LOOK,
  /** To be eaten before others. */
  FIRST,
  GOOD,
  /** Nothing to eat, or nothing known yet. */
  PLAIN;

  /** The name of its style on a page. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether somebody should see to the jar soon. */
  public boolean isUrgent() {
    return this == STOP || this == COLD;
  }
}
