package jarwright.process;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Kinds of things to buy, in the order in which a list has them. */
public enum Aisle {
  PRODUCE,
  MEAT,
  ACID,
  SALT,
  SUGAR,
  SPICE,
  GROCERY;

  /** By its word in the tables. */
  public static Optional<Aisle> named(String id) {
    return Arrays.stream(values()).filter(a -> a.id().equals(id)).findFirst();
  }

  public static List<String> ids() {
    return Arrays.stream(values()).map(Aisle::id).toList();
  }

  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
