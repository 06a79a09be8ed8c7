package jarwright.process;

import jarwright.quantity.Fraction;
import java.util.Optional;

/**
 * Weight of fresh produce that jars take, in pounds, each figure where the guide prints it.
 *
 * @param perSevenQuarts for a load of seven quarts, the larger where a range is printed
 * @param perNinePints for a load of nine pints, the larger where a range is printed
 * @param perQuart average for a quart
 * @param container weight and yield of a bushel, lug or crate
 */
public record ProduceNeed(
    Optional<Fraction> perSevenQuarts,
    Optional<Fraction> perNinePints,
    Optional<Fraction> perQuart,
    Optional<Container> container) {

  /** A container as sold, and the quarts that it gives. */
  public record Container(Fraction pounds, Fraction fewestQuarts, Fraction mostQuarts) {}

  public boolean isPrinted() {
    return perSevenQuarts.isPresent() || perNinePints.isPresent() || perQuart.isPresent();
  }
}
