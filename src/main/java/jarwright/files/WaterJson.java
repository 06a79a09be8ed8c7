package jarwright.files;

import com.fasterxml.jackson.core.JsonGenerator;
import jarwright.quantity.Fraction;
import jarwright.quantity.Length;
import jarwright.quantity.Volume;
import jarwright.water.WaterAdvice;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes what is said about a load's water. Depths are from the bottom of the canner. A least is
 * rounded up and a most down, so that both hold.
 */
final class WaterJson {
  private static final int DECIMALS = 1;

  private final Map<String, Object> fields = new LinkedHashMap<>();

  private WaterJson(String kind) {
    fields.put("kind", kind);
  }

  static void write(JsonGenerator out, WaterAdvice advice) throws IOException {
    WaterJson water =
        advice.fold(
            WaterJson::covering, WaterJson::tooShallow, WaterJson::unmeasured, WaterJson::pressure);
    out.writeStartObject();
    for (Map.Entry<String, Object> field : water.fields.entrySet()) {
      if (field.getValue() instanceof BigDecimal number) {
        out.writeNumberField(field.getKey(), number);
      } else if (field.getValue() instanceof List<?> words) {
        out.writeArrayFieldStart(field.getKey());
        for (Object word : words) {
          out.writeString(word.toString());
        }
        out.writeEndArray();
      } else {
        out.writeStringField(field.getKey(), field.getValue().toString());
      }
    }
    out.writeEndObject();
  }

  private static WaterJson covering(WaterAdvice.Covering covering) {
    return new WaterJson("covering")
        .cover(covering.cover())
        .least("put_in_ml", covering.before())
        .least("put_in_depth_mm", covering.depth())
        .least("jars_in_depth_least_mm", covering.from())
        .most("jars_in_depth_most_mm", covering.to())
        .least("kettle_ml", covering.kettle());
  }

  private static WaterJson tooShallow(WaterAdvice.TooShallow shallow) {
    return new WaterJson("too-shallow")
        .cover(shallow.cover())
        .most("inside_height_mm", shallow.inside())
        .least("inside_height_needed_mm", shallow.sure());
  }

  private static WaterJson unmeasured(WaterAdvice.Unmeasured unmeasured) {
    WaterJson water = new WaterJson("unmeasured").cover(unmeasured.cover());
    water.fields.put("missing", unmeasured.missing());
    return water;
  }

  private static WaterJson pressure(WaterAdvice.Pressure pressure) {
    WaterJson water =
        new WaterJson("pressure")
            .least("put_in_depth_least_mm", pressure.from())
            .most("put_in_depth_most_mm", pressure.to());
    pressure
        .volumes()
        .ifPresent(v -> water.least("put_in_least_ml", v.from()).most("put_in_most_ml", v.to()));
    return water;
  }

  private WaterJson cover(WaterAdvice.Cover cover) {
    return least("above_lids_mm", cover.aboveLids()).least("below_rim_mm", cover.belowRim());
  }

  private WaterJson least(String key, Length length) {
    return put(key, length.inMillimetres(), RoundingMode.CEILING);
  }

  private WaterJson least(String key, Volume volume) {
    return put(key, volume.inMillilitres(), RoundingMode.CEILING);
  }

  private WaterJson most(String key, Length length) {
    return put(key, length.inMillimetres(), RoundingMode.FLOOR);
  }

  private WaterJson most(String key, Volume volume) {
    return put(key, volume.inMillilitres(), RoundingMode.FLOOR);
  }

  private WaterJson put(String key, Fraction value, RoundingMode rounding) {
    fields.put(
        key,
        new BigDecimal(value.numerator())
            .divide(new BigDecimal(value.denominator()), DECIMALS, rounding));
    return this;
  }
}
