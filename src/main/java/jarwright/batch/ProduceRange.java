package jarwright.batch;

import jarwright.quantity.Mass;

/** Fresh produce for a batch: where it yields best, as the guide's load has it, and worst. */
public record ProduceRange(Mass least, Mass about, Mass most) {
  static ProduceRange exactly(Mass mass) {
    return new ProduceRange(mass, mass, mass);
  }

  public boolean isExact() {
    return least.equals(most);
  }
}
