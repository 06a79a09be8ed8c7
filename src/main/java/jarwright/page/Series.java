package jarwright.page;

import java.util.AbstractList;
import java.util.Map;
import java.util.function.IntFunction;

/**
 * A long list in a sheet's view whose parts are worked out as they are shown, one at a time, so
 * that a hundred thousand labels take no more room than a hundred.
 */
public final class Series extends AbstractList<Map<String, Object>> {
  private final int size;
  private final IntFunction<Map<String, Object>> part;

  /**
   * A list of {@code size} parts.
   *
   * @param part what the template may show of a part, by its index from 0; asked anew each time,
   *     and always to answer the same
   */
  public Series(int size, IntFunction<Map<String, Object>> part) {
    this.size = size;
    this.part = part;
  }

  @Override
  public Map<String, Object> get(int index) {
    return part.apply(index);
  }

  @Override
  public int size() {
    return size;
  }

  /** The same, each part checked and copied as a sheet does with all that it is given. */
  Series checked(String path) {
    return new Series(size, index -> Sheet.copy(path + "[" + index + "]", part.apply(index)));
  }
}
