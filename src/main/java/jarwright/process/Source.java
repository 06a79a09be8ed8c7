package jarwright.process;

/**
 * Where a figure is printed.
 *
 * @param place publication and page, as {@code AIB 539 (2015) p. 3-10}
 */
public record Source(String place) {
  public Source {
    if (place.isBlank()) {
      throw new IllegalArgumentException("a figure needs its source");
    }
  }

  @Override
  public String toString() {
    return place;
  }
}
