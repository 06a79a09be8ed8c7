package jarwright.checklist;

import jarwright.day.Figure;
import jarwright.day.PlannedBatch;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.PrintedRow;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A batch of every product, method and pack that has a tested process, in one kitchen. */
final class AllBatches {
  private static final int ALTITUDE = 1_400;

  private AllBatches() {}

  /** By product, method and pack in words, as {@code plums-halved-or-whole boiling-water raw}. */
  static Map<String, PlannedBatch> named() {
    Map<String, PlannedBatch> all = new LinkedHashMap<>();
    for (PrintedRow row : PrintedRow.all()) {
      if (row.isTested() && row.from() <= ALTITUDE && ALTITUDE <= row.to()) {
        for (Pack pack : List.of(Pack.RAW, Pack.HOT)) {
          if (row.isFor(pack.id())) {
            String name = row.product() + " " + row.method() + " " + pack.id();
            all.computeIfAbsent(name, key -> batch(row, pack));
          }
        }
      }
    }
    return all;
  }

  private static PlannedBatch batch(PrintedRow row, Pack pack) {
    Method method = Method.named(row.method()).orElseThrow();
    PlannedBatch batch =
        PlannedBatch.of(row.product(), method, pack, JarSize.named(row.jar()).orElseThrow())
            .at(ALTITUDE + " ft")
            .pressure(row.pressure());
    return method == Method.BOILING_WATER
        ? batch.water(new Figure("13-3/4 quarts", "13 L, 14.5\u00a0cm\u00a0deep"))
        : batch;
  }
}
