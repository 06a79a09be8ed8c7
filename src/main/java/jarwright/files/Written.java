package jarwright.files;

import jarwright.problem.Place;
import java.util.List;
import java.util.Map;

/** What somebody wrote, in whichever form, each piece with its place; nothing understood yet. */
sealed interface Written {
  Place place();

  /** What it is called in messages: {@code a value}, {@code a list}, {@code keys with values}. */
  String kind();

  /**
   * A single value.
   *
   * @param text as written, without quotes; empty where a key has no value
   * @param decimalComma whether the file may write 1,5 for one and a half
   */
  record Text(Place place, String text, boolean decimalComma) implements Written {
    @Override
    public String kind() {
      return "a value";
    }
  }

  /** A list. */
  record Items(Place place, List<Written> items) implements Written {
    @Override
    public String kind() {
      return "a list";
    }
  }

  /** Keys with values, in the order written. */
  record Keys(Place place, Map<String, Entry> entries) implements Written {
    @Override
    public String kind() {
      return "keys with values";
    }
  }

  /** One key with its value; {@code place} is the key's. */
  record Entry(Place place, Written value) {}
}
