package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

@Domain(Amounts.class)
class AmountProperties {
  private static final Style US = Style.english(Units.US);
  private static final Style METRIC = Style.english(Units.METRIC);

  @Property
  void theTextFormOfAVolumeReadsBack(@ForAll Volume volume) {
    assertEquals(volume, Volume.parse(volume.toString()));
  }

  @Property
  void theTextFormOfAMassReadsBack(@ForAll Mass mass) {
    assertEquals(mass, Mass.parse(mass.toString()));
  }

  @Property
  void theTextFormOfALengthReadsBack(@ForAll Length length) {
    assertEquals(length, Length.parse(length.toString()));
  }

  @Property
  void theTextFormOfAPressureReadsBack(@ForAll GaugePressure pressure) {
    assertEquals(pressure, GaugePressure.parse(pressure.toString()));
  }

  @Property
  void theTextFormOfATemperatureReadsBack(@ForAll Temperature temperature) {
    assertEquals(temperature, Temperature.parse(temperature.toString()));
  }

  @Property
  void theTextFormOfAnAltitudeReadsBack(@ForAll Altitude altitude) {
    assertEquals(altitude, Altitude.parse(altitude.toString()));
  }

  @Property
  void metricVolumeIsNeverLessWhenRoundedUpNorMoreWhenRoundedDown(@ForAll Volume volume) {
    assertTrue(Volume.parse(volume.text(METRIC, Rounding.UP)).compareTo(volume) >= 0);
    assertTrue(Volume.parse(volume.text(METRIC, Rounding.DOWN)).compareTo(volume) <= 0);
  }

  @Property
  void metricVolumeRoundedUpIsOverByLessThanAQuarterFromAMillilitreOn(@ForAll Volume volume) {
    Fraction exact = volume.inMillilitres();
    if (exact.compareTo(Fraction.ONE) >= 0) {
      Fraction up = Volume.parse(volume.text(METRIC, Rounding.UP)).inMillilitres();
      assertTrue(up.minus(exact).times(4).compareTo(exact) < 0, () -> exact + " mL to " + up);
    }
  }

  @Property
  void kitchenMeasuresAddUpToTheVolumeExactly(@ForAll Volume volume) {
    if (volume.unit().isMetric()) {
      assertEquals(volume.text(METRIC, Rounding.UP), volume.text(US, Rounding.UP));
      return;
    }
    Volume sum = new Volume(Fraction.ZERO, Volume.Unit.TSP);
    for (String part : volume.text(US, Rounding.UP).split(" \\+ ")) {
      sum = sum.plus(Volume.parse(part));
    }
    assertEquals(0, sum.compareTo(volume), volume.text(US, Rounding.UP));
  }

  @Property
  void massIsNeverLessWhenRoundedUpNorMoreWhenRoundedDown(@ForAll Mass mass) {
    for (Style style : new Style[] {US, METRIC}) {
      assertTrue(Mass.parse(mass.text(style, Rounding.UP)).compareTo(mass) >= 0);
      assertTrue(Mass.parse(mass.text(style, Rounding.DOWN)).compareTo(mass) <= 0);
    }
  }

  @Property
  void lengthIsNeverLessWhenRoundedUpNorMoreWhenRoundedDown(@ForAll Length length) {
    for (Style style : new Style[] {US, METRIC}) {
      assertTrue(Length.parse(length.text(style, Rounding.UP)).compareTo(length) >= 0);
      assertTrue(Length.parse(length.text(style, Rounding.DOWN)).compareTo(length) <= 0);
    }
  }

  @Property
  void temperatureIsNeverLessWhenRoundedUpNorMoreWhenRoundedDown(@ForAll Temperature temperature) {
    for (Style style : new Style[] {US, METRIC}) {
      String up = temperature.text(style, Rounding.UP);
      String down = temperature.text(style, Rounding.DOWN);
      assertTrue(Temperature.parse(up).compareTo(temperature) >= 0, up);
      assertTrue(Temperature.parse(down).compareTo(temperature) <= 0, down);
    }
  }

  @Property
  void pressureOnPaperIsNeverLess(@ForAll GaugePressure pressure) {
    for (String text : List.of(pressure.psi(US), pressure.kilopascals(METRIC))) {
      assertTrue(GaugePressure.parse(text).compareTo(pressure) >= 0);
    }
  }

  @Property
  void altitudeOnPaperIsNeverLess(@ForAll Altitude altitude) {
    for (Style style : new Style[] {US, METRIC}) {
      assertTrue(Altitude.parse(altitude.text(style)).compareTo(altitude) >= 0);
    }
  }

  @Property
  void theFootThatTablesAreAskedForIsTheNextOneUp(@ForAll Altitude altitude) {
    Fraction over = Fraction.of(altitude.feetRoundedUp()).minus(altitude.inFeet());
    assertTrue(over.signum() >= 0 && over.compareTo(Fraction.ONE) < 0);
  }

  @Property
  void soManyTimesAVolumeIsThatManyTimesItsMillilitres(@ForAll Volume one, @ForAll Volume other) {
    assertEquals(one.inMillilitres().plus(other.inMillilitres()), one.plus(other).inMillilitres());
    assertEquals(one.unit(), one.plus(other).unit());
    assertEquals(one.inMillilitres().times(7), one.times(Fraction.of(7)).inMillilitres());
    assertEquals(one.inMillilitres(), other.unit().inBase().times(one.in(other.unit())));
  }

  @Property
  void massesAndLengthsAddUpInAnyUnits(
      @ForAll Mass mass, @ForAll Mass more, @ForAll Length length, @ForAll Length longer) {
    assertEquals(mass.inGrams().plus(more.inGrams()), mass.plus(more).inGrams());
    assertEquals(mass.inGrams().times(3), mass.times(Fraction.of(3)).inGrams());
    assertEquals(mass.inPounds().plus(more.inPounds()), mass.plus(more).inPounds());
    assertEquals(
        length.inMillimetres().plus(longer.inMillimetres()), length.plus(longer).inMillimetres());
  }

  @Property
  void orderIsThatOfTheBaseUnit(
      @ForAll Volume a, @ForAll Volume b, @ForAll Altitude low, @ForAll Altitude high) {
    assertEquals(a.inMillilitres().compareTo(b.inMillilitres()), Integer.signum(a.compareTo(b)));
    assertEquals(low.inMetres().compareTo(high.inMetres()), Integer.signum(low.compareTo(high)));
    assertEquals(low.inFeet().compareTo(high.inFeet()), Integer.signum(low.compareTo(high)));
  }

  @Property
  void orderOfMassLengthPressureAndTemperatureIsThatOfTheirBaseUnits(
      @ForAll Mass m, @ForAll Mass n, @ForAll GaugePressure p, @ForAll GaugePressure q) {
    assertEquals(m.inGrams().compareTo(n.inGrams()), m.compareTo(n));
    assertEquals(m.inPounds().compareTo(n.inPounds()), m.compareTo(n));
    assertEquals(p.inPsi().compareTo(q.inPsi()), p.compareTo(q));
  }

  @Property
  void orderOfTemperaturesIsTheSameOnBothScales(
      @ForAll Temperature t, @ForAll Temperature u, @ForAll Length a, @ForAll Length b) {
    assertEquals(t.inFahrenheit().compareTo(u.inFahrenheit()), t.compareTo(u));
    assertEquals(t.inCelsius().compareTo(u.inCelsius()), t.compareTo(u));
    assertEquals(a.inInches().compareTo(b.inInches()), a.compareTo(b));
  }
}
