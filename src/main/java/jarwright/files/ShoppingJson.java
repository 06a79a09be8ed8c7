package jarwright.files;

import com.fasterxml.jackson.core.JsonGenerator;
import jarwright.batch.Amounts;
import jarwright.batch.Batch;
import jarwright.batch.Shopping;
import jarwright.batch.ShoppingLine;
import jarwright.process.Buying;
import jarwright.process.JarSize;
import jarwright.quantity.Fraction;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Writes what to buy for all batches of {@link KitJson}. What is not known is left out. */
final class ShoppingJson {
  private static final int DECIMALS = 3;

  private final JsonGenerator out;

  private ShoppingJson(JsonGenerator out) {
    this.out = out;
  }

  static void write(JsonGenerator out, List<Batch> batches, Buying buying) throws IOException {
    ShoppingJson json = new ShoppingJson(out);
    out.writeStartObject();
    out.writeArrayFieldStart("lines");
    for (ShoppingLine line : Shopping.of(batches, buying)) {
      json.line(line);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("jars_and_lids");
    for (Map.Entry<JarSize, Integer> size : Shopping.jars(batches).entrySet()) {
      json.jars(size.getKey(), size.getValue());
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void line(ShoppingLine line) throws IOException {
    out.writeStartObject();
    out.writeStringField("what", line.what());
    out.writeStringField("aisle", line.aisle().id());
    out.writeBooleanField("optional", line.optional());
    if (!line.choice().isEmpty()) {
      out.writeStringField("choice", line.choice());
    }
    if (line.oneMaking()) {
      out.writeBooleanField("for_one_making", true);
    }
    amounts(line.amounts());
    out.writeArrayFieldStart("lots");
    for (Batch batch : line.batches()) {
      out.writeString(batch.lot().toString());
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void amounts(Amounts amounts) throws IOException {
    if (amounts.weight().isPresent()) {
      Amounts.Weight weight = amounts.weight().get();
      number("lb", weight.about().inPounds());
      number("lb_at_most", weight.most().inPounds());
      out.writeBooleanField("estimate", weight.estimate());
    }
    if (amounts.volume().isPresent()) {
      number("ml", amounts.volume().get().inMillilitres());
    }
    if (!amounts.pieces().isEmpty()) {
      out.writeArrayFieldStart("pieces");
      for (Map.Entry<String, Fraction> piece : new TreeMap<>(amounts.pieces()).entrySet()) {
        out.writeStartObject();
        number("number", piece.getValue());
        out.writeStringField("unit", piece.getKey());
        out.writeEndObject();
      }
      out.writeEndArray();
    }
    if (amounts.eachGallon().isPresent()) {
      number("ml_each_gallon_of_water", amounts.eachGallon().get().inMillilitres());
    }
    if (amounts.enough()) {
      out.writeBooleanField("enough_to_cover", true);
    }
    if (!amounts.fills().isEmpty()) {
      out.writeArrayFieldStart("fills");
      for (Map.Entry<JarSize, Integer> size : new TreeMap<>(amounts.fills()).entrySet()) {
        jars(size.getKey(), size.getValue());
      }
      out.writeEndArray();
    }
    if (amounts.toTaste()) {
      out.writeBooleanField("to_taste", true);
    }
  }

  private void jars(JarSize jar, int number) throws IOException {
    out.writeStartObject();
    out.writeStringField("jar", jar.id());
    out.writeNumberField("number", number);
    out.writeEndObject();
  }

  /** Never less than it is. */
  private void number(String key, Fraction value) throws IOException {
    BigDecimal decimal =
        new BigDecimal(value.numerator())
            .divide(new BigDecimal(value.denominator()), DECIMALS, RoundingMode.CEILING);
    out.writeNumberField(key, decimal);
  }
}
