package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.problem.Refused;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.DefaultParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two people at the same household's books at once. */
class SealMeanwhileTest {
  private static final String[] TYPED =
      "seal 260824B-R --start 12:00 --end 12:45 --kept yes --acid yes --cloudy no".split(" ");

  @TempDir Path folder;

  private Household another() throws IOException {
    return new Household(folder).at("2026-08-24T13:30:00-05:00");
  }

  @Test
  void whatIsWrittenIsWhatWasShown() throws Exception {
    Household house = Household.withKit(folder);
    List<String> answers =
        List.of("none", "", "none", "12:00", "yes", "12:45", "no", "none", "", "yes");
    BufferedReader slow =
        new BufferedReader(new StringReader(String.join("\n", answers))) {
          @Override
          public String readLine() throws IOException {
            String line = super.readLine();
            if (house.shown().contains("Save this?")) {
              assertEquals(0, another().run(TYPED));
            }
            return line;
          }
        };
    assertEquals(1, house.run(Optional.of(slow), "seal", "260824B-R"));
    assertTrue(house.told().contains("changed meanwhile; nothing was recorded"), house.told());
    assertEquals(6, house.ledger().size());
  }

  @Test
  void aKitBegunBeforeTheSealDoesNotChangeTheFrozenRecord() throws Exception {
    Household house = Household.withKit(folder);
    Path record = house.file("pantry/batches/260824B-R.yaml");
    String planned = Files.readString(record);
    String plan = Files.readString(house.file("plan.yaml"));
    house.write("plan.yaml", plan.replace("acid: citric acid", "acid: bottled lemon juice"));
    Call kit =
        new Call(
            house.surroundings(Optional.empty()),
            new DefaultParser()
                .parse(CommonOptions.with(new KitCommand().options()), new String[0]));
    Register register = new Register(kit);
    List<PlanRun> runs = PlanRuns.of(List.of(house.file("plan.yaml")), kit, register::lotsOf);
    assertEquals(0, house.run(TYPED), house.told());
    Refused refused = assertThrows(Refused.class, () -> register.write(runs));
    assertTrue(refused.getMessage().contains("its record as planned stays"));
    assertEquals(planned, Files.readString(record));
  }
}
