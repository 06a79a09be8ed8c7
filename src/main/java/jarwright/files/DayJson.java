package jarwright.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import jarwright.day.Ahead;
import jarwright.day.DayPlan;
import jarwright.day.Notice;
import jarwright.day.PlannedLoad;
import jarwright.day.Rush;
import jarwright.day.Task;
import java.io.IOException;
import java.io.StringWriter;
import java.time.ZonedDateTime;
import java.util.List;

/** Writes days by the clock for other programs. Clock times are ISO 8601 with their offset. */
public final class DayJson {
  private DayJson() {}

  /** The days as a document of their own. */
  public static String of(List<DayPlan> days) throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
      out.useDefaultPrettyPrinter();
      write(out, days);
    }
    return text.append('\n').toString();
  }

  static void write(JsonGenerator out, List<DayPlan> days) throws IOException {
    out.writeStartArray();
    for (DayPlan day : days) {
      write(out, day);
    }
    out.writeEndArray();
  }

  private static void write(JsonGenerator out, DayPlan day) throws IOException {
    out.writeStartObject();
    out.writeStringField("date", day.date().toString());
    out.writeStringField("start", clock(day.start()));
    out.writeStringField("finish", clock(day.at(day.finish())));
    out.writeNumberField("finish_minutes_least", day.finishRange().min());
    out.writeNumberField("finish_minutes_most", day.finishRange().max());
    out.writeBooleanField("proven_soonest", day.proven());
    out.writeNumberField("minutes_above_bound", day.gap());
    out.writeNumberField("hands", day.hands());
    out.writeNumberField("burners", day.burners());
    out.writeArrayFieldStart("ahead");
    for (Ahead ahead : day.ahead()) {
      ahead(out, ahead);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("loads");
    for (PlannedLoad load : day.loads()) {
      load(out, load);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("tasks");
    for (Task task : day.tasks()) {
      task(out, day, task);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("rushes");
    for (Rush rush : day.rushes()) {
      rush(out, day, rush);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("notices");
    for (Notice notice : day.notices()) {
      notice(out, notice);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void ahead(JsonGenerator out, Ahead ahead) throws IOException {
    out.writeStartObject();
    out.writeStringField("lot", ahead.lot().toString());
    out.writeStringField("start", clock(ahead.start()));
    out.writeStringField("waits_from", clock(ahead.waits()));
    out.writeStringField("waits_until", clock(ahead.until()));
    out.writeEndObject();
  }

  private static void rush(JsonGenerator out, DayPlan day, Rush rush) throws IOException {
    out.writeStartObject();
    out.writeStringField("start", clock(day.at(rush.start())));
    out.writeStringField("end", clock(day.at(rush.end())));
    out.writeNumberField("pairs_of_hands", rush.pairs());
    out.writeEndObject();
  }

  private static void notice(JsonGenerator out, Notice notice) throws IOException {
    out.writeStartObject();
    out.writeStringField("kind", notice.kind().id());
    if (notice.lot().isPresent()) {
      out.writeStringField("lot", notice.lot().get().toString());
    }
    out.writeArrayFieldStart("details");
    for (Object detail : notice.details()) {
      out.writeString(detail.toString());
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void load(JsonGenerator out, PlannedLoad load) throws IOException {
    out.writeStartObject();
    out.writeStringField("lot", load.load().batch().lot().toString());
    out.writeNumberField("load", load.load().number());
    out.writeNumberField("jars", load.load().jars());
    out.writeNumberField("jars_of_water", load.load().waterJars());
    out.writeStringField("canner", load.load().batch().canner().name());
    out.writeBooleanField("below_minimum", load.load().belowMinimum());
    out.writeFieldName("water");
    WaterJson.write(out, load.load().water());
    out.writeStringField("out", clock(load.out()));
    out.writeStringField("test_seals_from", clock(load.testFrom()));
    out.writeStringField("test_seals_by", clock(load.testBy()));
    out.writeEndObject();
  }

  private static void task(JsonGenerator out, DayPlan day, Task task) throws IOException {
    out.writeStartObject();
    out.writeStringField("kind", task.kind().id());
    out.writeNumberField("load", task.load());
    out.writeStringField("start", clock(day.at(task.start())));
    out.writeStringField("end", clock(day.at(task.end())));
    out.writeNumberField("minutes", task.minutes().planned());
    out.writeBooleanField("estimate", !task.isExact());
    out.writeArrayFieldStart("hands");
    for (int hand : task.hands()) {
      out.writeNumber(hand);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("burners");
    for (int burner : task.burners()) {
      out.writeNumber(burner);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static String clock(ZonedDateTime time) {
    return time.toOffsetDateTime().toString();
  }
}
