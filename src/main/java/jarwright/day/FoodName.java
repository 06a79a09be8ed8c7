package jarwright.day;

/** A food's name as it is called in a kitchen. */
public final class FoodName {
  /** A longer list of kinds in brackets is no part of what it is called. */
  private static final int SHORT_LIST = 28;

  private FoodName() {}

  /** The name without a long list of kinds at its end. */
  public static String brief(String name) {
    int kinds = name.endsWith(")") ? name.indexOf(" (") : -1;
    return kinds > 0 && name.length() - kinds > SHORT_LIST ? name.substring(0, kinds) : name;
  }
}
