package jarwright.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import jarwright.batch.Batch;
import jarwright.batch.BatchRecord;
import jarwright.day.DayPlan;
import jarwright.plan.Kitchen;
import jarwright.plan.Plan;
import jarwright.process.Buying;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Collection;
import java.util.List;

/**
 * Everything computed for a plan, for other programs: {@code kit.json}. Its form is described by
 * {@code jarwright/kit-schema.json}; the same kit is always the same bytes.
 */
public final class KitJson {
  /** Raised when a key changes its meaning or goes. */
  static final int VERSION = 1;

  /** A batch worked out, with its record. */
  public record Entry(Batch batch, BatchRecord record) {}

  private final JsonGenerator out;

  private KitJson(JsonGenerator out) {
    this.out = out;
  }

  /**
   * The file's content, UTF-8.
   *
   * @param days the plan's days by the clock
   * @param buying how ingredients are bought
   * @param files the names of the kit's other files, in order
   */
  public static byte[] of(
      Plan plan, List<Entry> batches, List<DayPlan> days, Buying buying, Collection<String> files)
      throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(lines);
    try (JsonGenerator out = new JsonFactory().createGenerator(bytes)) {
      out.setPrettyPrinter(printer);
      new KitJson(out).write(plan, batches, days, buying, files);
      out.writeRaw('\n');
    }
    return bytes.toByteArray();
  }

  private void write(
      Plan plan, List<Entry> batches, List<DayPlan> days, Buying buying, Collection<String> files)
      throws IOException {
    out.writeStartObject();
    out.writeStringField("format", "jarwright-kit");
    out.writeNumberField("version", VERSION);
    out.writeStringField("plan", plan.name());
    kitchen(plan.kitchen());
    out.writeArrayFieldStart("batches");
    for (Entry entry : batches) {
      new KitJsonBatch(out, entry.batch(), entry.record()).write();
    }
    out.writeEndArray();
    out.writeFieldName("shopping");
    ShoppingJson.write(out, batches.stream().map(Entry::batch).toList(), buying);
    out.writeFieldName("days");
    DayJson.write(out, days);
    out.writeArrayFieldStart("files");
    for (String file : files) {
      out.writeString(file);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void kitchen(Kitchen kitchen) throws IOException {
    out.writeObjectFieldStart("kitchen");
    out.writeStringField("household", kitchen.household());
    out.writeObjectFieldStart("altitude");
    out.writeStringField("given", kitchen.altitude().toString());
    out.writeNumberField("feet_rounded_up", kitchen.altitude().feetRoundedUp());
    out.writeEndObject();
    out.writeStringField("paper", kitchen.paper().id());
    out.writeStringField("units", kitchen.units().word());
    out.writeStringField("language", kitchen.language());
    out.writeStringField("clock", kitchen.clock().id());
    out.writeNumberField("months_to_use_by", kitchen.monthsToUseBy());
    out.writeEndObject();
  }
}
