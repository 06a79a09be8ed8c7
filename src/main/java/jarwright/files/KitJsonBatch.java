package jarwright.files;

import com.fasterxml.jackson.core.JsonGenerator;
import jarwright.batch.AcidPerJar;
import jarwright.batch.Batch;
import jarwright.batch.BatchRecord;
import jarwright.batch.FormulaMultiple;
import jarwright.batch.ProduceRange;
import jarwright.batch.SyrupNeed;
import jarwright.plan.BatchPlan;
import jarwright.process.FormulaLine;
import jarwright.process.Headspace;
import jarwright.process.TableRow;
import jarwright.process.TestedProcess;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import jarwright.quantity.Volume;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalTime;
import java.util.Optional;

/** Writes one batch of {@link KitJson}. A key without a value is left out. */
final class KitJsonBatch {
  private static final int DECIMALS = 3;

  private final JsonGenerator out;
  private final Batch batch;
  private final BatchRecord record;

  KitJsonBatch(JsonGenerator out, Batch batch, BatchRecord record) {
    this.out = out;
    this.batch = batch;
    this.record = record;
  }

  void write() throws IOException {
    out.writeStartObject();
    text("lot", batch.lot());
    text("plan_file", record.origin().plan());
    out.writeNumberField("position", record.origin().position());
    text("product", batch.product().id());
    text("name", batch.product().name());
    text("category", batch.product().category());
    text("pack", batch.pack());
    text("jar", batch.jar());
    text("packed", batch.plan().date());
    text("use_by", batch.useBy());
    maybe("start", batch.plan().start());
    maybe("finish", batch.plan().finish());
    if (batch.plan().hands().isPresent()) {
      out.writeNumberField("hands", batch.plan().hands().getAsInt());
    }
    process();
    acid();
    if (batch.salt().isPresent()) {
      volume("salt_each_jar", batch.salt().get());
    }
    syrup();
    headspace();
    produce();
    formula();
    jars();
    notes(batch.plan().notes());
    out.writeEndObject();
  }

  private void process() throws IOException {
    out.writeObjectFieldStart("process");
    text("method", batch.method());
    timeAndPressure(batch.process());
    out.writeObjectFieldStart("altitude_band_ft");
    out.writeNumberField("from", batch.row().band().fromFeet());
    if (batch.row().band().toFeet().isPresent()) {
      out.writeNumberField("to", batch.row().band().toFeet().getAsInt());
    }
    out.writeEndObject();
    text("source", batch.row().source());
    maybe("time_printed_for", batch.printedFor());
    if (batch.sterilise().isPresent()) {
      out.writeNumberField("sterilise_jars_minutes", batch.sterilise().get());
    }
    out.writeArrayFieldStart("offered");
    for (TableRow row : batch.offered()) {
      out.writeStartObject();
      timeAndPressure(row.process().orElseThrow());
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void timeAndPressure(TestedProcess process) throws IOException {
    out.writeNumberField("minutes", process.minutes());
    if (process.pressure().isPresent()) {
      out.writeNumberField("psi", decimal(process.pressure().get().inPsi(), RoundingMode.CEILING));
    }
  }

  private void acid() throws IOException {
    if (batch.acid().isPresent()) {
      AcidPerJar acid = batch.acid().get();
      out.writeObjectFieldStart("acid");
      text("kind", acid.kind());
      volume("each_jar", acid.each());
      volume("all_jars", acid.total());
      out.writeEndObject();
    }
  }

  private void syrup() throws IOException {
    if (batch.plan().cover().isPresent()) {
      text("cover", batch.plan().cover().get().id());
    }
    if (batch.syrup().isPresent()) {
      SyrupNeed syrup = batch.syrup().get();
      out.writeObjectFieldStart("syrup");
      text("strength", syrup.syrup());
      volume("water", syrup.water());
      volume("sugar", syrup.sugar());
      text("source", syrup.source());
      out.writeEndObject();
    }
  }

  private void headspace() throws IOException {
    out.writeArrayFieldStart("headspace");
    for (Headspace space : batch.headspace()) {
      out.writeStartObject();
      text("of", space.of());
      text("inches", space.depth().inInches());
      out.writeNumberField("mm", decimal(space.depth().inMillimetres(), RoundingMode.HALF_UP));
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private void produce() throws IOException {
    if (batch.produce().isPresent()) {
      ProduceRange range = batch.produce().get();
      out.writeObjectFieldStart("produce");
      mass("least", range.least());
      mass("about", range.about());
      mass("most", range.most());
      out.writeEndObject();
    }
  }

  private void mass(String key, Mass mass) throws IOException {
    out.writeObjectFieldStart(key);
    out.writeNumberField("lb", decimal(mass.inPounds(), RoundingMode.CEILING));
    out.writeNumberField("g", decimal(mass.inGrams(), RoundingMode.CEILING));
    out.writeEndObject();
  }

  private void formula() throws IOException {
    if (batch.formula().isEmpty()) {
      return;
    }
    FormulaMultiple multiple = batch.formula().get();
    out.writeObjectFieldStart("formula");
    text("printed_yield", multiple.formula().yield());
    if (multiple.times().isPresent()) {
      out.writeNumberField("times", decimal(multiple.times().get(), RoundingMode.UNNECESSARY));
    }
    out.writeArrayFieldStart("ingredients");
    for (FormulaLine line : multiple.lines()) {
      out.writeStartObject();
      text("ingredient", line.ingredient());
      text("least", line.least());
      text("most", line.most());
      text("unit", line.unit());
      text("note", line.note());
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void jars() throws IOException {
    out.writeObjectFieldStart("jars");
    out.writeNumberField("ready", batch.jars());
    out.writeNumberField("fewest", batch.expected().fewest());
    out.writeNumberField("likely", batch.expected().likely());
    out.writeNumberField("most", batch.expected().most());
    out.writeNumberField("lids", batch.lids());
    out.writeArrayFieldStart("ids");
    for (int number = 1; number <= batch.jars(); number++) {
      out.writeString(batch.lot().jar(number).toString());
    }
    out.writeEndArray();
    out.writeEndObject();
    text("canner", batch.canner().name());
    out.writeArrayFieldStart("loads");
    for (int i = 0; i < record.jars().loads().size(); i++) {
      out.writeStartObject();
      out.writeNumberField("jars", record.jars().loads().get(i));
      if (i < record.days().times().size()) {
        LocalTime start = record.days().times().get(i);
        text("process_starts", start);
      }
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private void notes(BatchPlan.Notes notes) throws IOException {
    out.writeObjectFieldStart("notes");
    text("from", notes.from());
    text("shelf", notes.shelf());
    text("lids", notes.lids());
    text("note", notes.note());
    out.writeEndObject();
  }

  /** Exact in its unit; the millilitres are never less than that. */
  private void volume(String key, Volume volume) throws IOException {
    out.writeObjectFieldStart(key);
    text("amount", volume.amount());
    text("unit", volume.unit().spellings().get(0));
    out.writeNumberField("ml", decimal(volume.inMillilitres(), RoundingMode.CEILING));
    out.writeEndObject();
  }

  private static BigDecimal decimal(Fraction value, RoundingMode rounding) {
    return new BigDecimal(value.numerator())
        .divide(new BigDecimal(value.denominator()), DECIMALS, rounding);
  }

  private void maybe(String key, Optional<?> value) throws IOException {
    if (value.isPresent()) {
      text(key, value.get());
    }
  }

  private void text(String key, Object value) throws IOException {
    out.writeStringField(key, value.toString());
  }
}
