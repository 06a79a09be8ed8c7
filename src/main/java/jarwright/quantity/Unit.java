package jarwright.quantity;

import java.util.List;

/** A unit of one kind of amount. */
interface Unit {
  /** Every spelling that a plan may use; the first is the one printed. */
  List<String> spellings();

  /** One of this unit in the base unit of its kind. */
  Fraction inBase();
}
