package jarwright.day;

import jarwright.process.Pack;
import jarwright.quantity.Rounding;
import jarwright.quantity.Temperature;

/** How hot the canner's water is when the jars go in: AIB 539 (2015) Guide 1. */
final class Preheat {
  private static final Temperature RAW = Temperature.fahrenheit(140);
  private static final Temperature HOT = Temperature.fahrenheit(180);

  private Preheat() {}

  static Figure of(Pack pack, StepWords words) {
    Temperature preheat = pack == Pack.RAW ? RAW : HOT;
    return words.figure(style -> preheat.text(style, Rounding.NEAREST));
  }
}
