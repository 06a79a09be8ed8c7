package jarwright.process;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What the process book says of a setting. Only {@link Found} lets a batch be made. */
public sealed interface Answer {

  /** One result for each of the three answers. */
  <T> T fold(
      Function<Found, T> found,
      Function<NotRecommended, T> notRecommended,
      Function<NotCovered, T> notCovered);

  /**
   * Tested.
   *
   * @param rows one row, or one for each time and pressure that the table offers
   * @param printedFor the jar size whose row serves a size that the guide does not list
   */
  record Found(List<TableRow> rows, Optional<JarSize> printedFor) implements Answer {
    public Found {
      rows = List.copyOf(rows);
    }

    @Override
    public <T> T fold(
        Function<Found, T> found,
        Function<NotRecommended, T> notRecommended,
        Function<NotCovered, T> notCovered) {
      return found.apply(this);
    }
  }

  /** The guide names the setting and closes it. */
  record NotRecommended(TableRow row, List<TableRow> tested) implements Answer {
    public NotRecommended {
      tested = List.copyOf(tested);
    }

    @Override
    public <T> T fold(
        Function<Found, T> found,
        Function<NotRecommended, T> notRecommended,
        Function<NotCovered, T> notCovered) {
      return notRecommended.apply(this);
    }
  }

  /**
   * No tested process.
   *
   * @param reason the first thing that has none
   * @param tested every row of the product that holds at this altitude; may be empty
   */
  record NotCovered(Gap reason, List<TableRow> tested) implements Answer {
    public NotCovered {
      tested = List.copyOf(tested);
    }

    @Override
    public <T> T fold(
        Function<Found, T> found,
        Function<NotRecommended, T> notRecommended,
        Function<NotCovered, T> notCovered) {
      return notCovered.apply(this);
    }
  }

  /** Which part of a setting the tables do not have. */
  enum Gap {
    METHOD,
    PACK,
    JAR,
    ALTITUDE
  }
}
