package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import jarwright.batch.Batch;
import jarwright.batch.BatchRecord;
import jarwright.day.DayPlan;
import jarwright.day.DayPlanner;
import jarwright.plan.Plan;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.PreparationStep;
import jarwright.process.Product;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KitJsonTest {
  /** One batch of so many stands in the day, so that it is not endless and has every method. */
  private static final int EVERY = 12;

  private static final List<String> FILES = List.of("checklist.pdf", "records/index.html");

  @Test
  void theKitOfEveryProductFitsTheSchema() throws Exception {
    assertEquals(List.of(), faults(kit()));
  }

  @Test
  void theSameKitIsTheSameBytes() throws Exception {
    assertArrayEquals(
        kit().getBytes(StandardCharsets.UTF_8), kit().getBytes(StandardCharsets.UTF_8));
  }

  /** The schema would not be worth much if it let everything through. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "\"minutes\" : 45~\"minutes\" : \"45\"",
        "\"minutes\" : 45~\"minuets\" : 45",
        "\"version\" : 1~\"version\" : 2",
        "\"pack\" : \"hot\"~\"pack\" : \"warm\"",
        "\"lot\" : \"260824~\"lot\" : \"2608",
        "\"inches\" : \"1/2\"~\"inches\" : \"0.5\"",
        "\"source\" : ~\"sauce\" : ",
        "\"kind\" : \"process\"~\"kind\" : \"proceed\"",
        "\"estimate\" : false~\"estimate\" : \"no\"",
        "\"test_seals_by\" : ~\"test_seals\" : ",
        "\"put_in_depth_least_mm\" : ~\"put_in_inches\" : ",
      })
  void aDamagedKitDoesNot(String from, String to) throws Exception {
    String sound = kit();
    String damaged = sound.replace(from, to);
    assertFalse(damaged.equals(sound), from);
    assertFalse(faults(damaged).isEmpty(), to);
  }

  private static List<String> faults(String json) throws Exception {
    String text = OwnText.of("/jarwright/kit-schema.json");
    JsonSchema schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(text);
    return schema.validate(json, InputFormat.JSON).stream().map(Object::toString).toList();
  }

  private static List<PreparationStep> steps(Product product) {
    try {
      return StepTables.read(product, "en");
    } catch (IOException | Refused e) {
      throw new AssertionError(e);
    }
  }

  private static String kit() throws Exception {
    List<KitJson.Entry> entries = new ArrayList<>();
    for (Batch batch : EveryProduct.batches()) {
      List<LocalTime> times = List.of(LocalTime.of(9, 5), LocalTime.of(10, 0));
      entries.add(
          new KitJson.Entry(batch, BatchRecord.of(batch, List.of(batch.jars() - 2, 2), times)));
    }
    Problems problems = new Problems();
    List<Batch> some = new ArrayList<>();
    for (int i = 0; i < entries.size(); i += EVERY) {
      some.add(entries.get(i).batch());
    }
    List<DayPlan> days =
        new DayPlanner(DayTables.read(), KitJsonTest::steps)
            .plan(some, ZoneId.of("Europe/Vienna"), problems);
    assertEquals(List.of(), problems.list());
    Plan plan =
        new Plan("all", EveryProduct.KITCHEN, entries.stream().map(e -> e.batch().plan()).toList());
    return new String(
        KitJson.of(plan, entries, days, BuyingTables.read(), FILES), StandardCharsets.UTF_8);
  }
}
