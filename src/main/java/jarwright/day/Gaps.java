package jarwright.day;

import java.util.Arrays;

/**
 * The least minutes between any two moments that follow from all requirements so far; moment 0 is
 * the start of the day. Closed at every step: a requirement that contradicts the others is found at
 * once.
 */
final class Gaps {
  /** Far below any gap that a requirement can give, far above overflow. */
  private static final int NONE = -100_000_000;

  private final int size;
  private final int[] least;

  Gaps(int size) {
    this.size = size;
    this.least = new int[size * size];
    Arrays.fill(least, NONE);
    for (int i = 0; i < size; i++) {
      least[i * size + i] = 0;
    }
  }

  private Gaps(Gaps other) {
    this.size = other.size;
    this.least = other.least.clone();
  }

  Gaps copy() {
    return new Gaps(this);
  }

  int size() {
    return size;
  }

  /** How much later than the first the second moment must be at the least; may be negative. */
  int between(int first, int second) {
    return least[first * size + second];
  }

  /** Whether the second moment can still be so much later than the first. */
  boolean allows(int first, int second, int minutes) {
    return room(first, second, minutes) >= 0;
  }

  /** By how much more than that it could still be later; negative where it cannot be so late. */
  int room(int first, int second, int minutes) {
    return -least[second * size + first] - minutes;
  }

  /** Requires the second moment to be so much later; false where that cannot be. */
  boolean require(int first, int second, int minutes) {
    if (between(first, second) >= minutes) {
      return true;
    }
    if (!allows(first, second, minutes)) {
      return false;
    }
    for (int i = 0; i < size; i++) {
      int toFirst = least[i * size + first];
      if (toFirst > NONE) {
        int through = toFirst + minutes;
        for (int j = 0; j < size; j++) {
          int onwards = least[second * size + j];
          if (onwards > NONE && through + onwards > least[i * size + j]) {
            least[i * size + j] = through + onwards;
          }
        }
      }
    }
    return true;
  }
}
