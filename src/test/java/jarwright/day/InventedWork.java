package jarwright.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Days of work drawn by a fixed seed. */
final class InventedWork {
  private final Random random;

  InventedWork(long seed) {
    random = new Random(seed);
  }

  /** So few minutes everywhere that every minute can be tried. */
  DayWork tiny(int loads) {
    return day(loads, 1, 2, loads < 4 ? 4 : 2);
  }

  /** As in a kitchen. */
  DayWork usual(int loads) {
    return day(loads, 10, 30, 90);
  }

  private DayWork day(int loads, int least, int handWork, int canning) {
    int hands = 1 + random.nextInt(3);
    int canners = 1 + random.nextInt(2);
    int pots = 2 + random.nextInt(2);
    List<LoadWork> all = new ArrayList<>();
    int batch = -1;
    LoadWork of = null;
    for (int i = 0; i < loads; i++) {
      if (of == null || random.nextInt(2) == 0) {
        batch++;
        of = load(batch, random.nextInt(canners), hands, least, handWork, canning);
      }
      all.add(of);
    }
    return new DayWork(numbered(all), hands, pots, random.nextInt(3) * least);
  }

  /** Canners count up without a gap. */
  private static List<LoadWork> numbered(List<LoadWork> loads) {
    boolean onlySecond = loads.stream().allMatch(l -> l.canner() == 1);
    return onlySecond ? loads.stream().map(l -> onCanner(l, 0)).toList() : loads;
  }

  private LoadWork load(int batch, int canner, int hands, int least, int handWork, int canning) {
    boolean cooked = random.nextBoolean();
    return new LoadWork(
        batch,
        canner,
        random.nextInt(4) == 0 ? random.nextInt(3) * least : 0,
        least + random.nextInt(handWork),
        1 + random.nextInt(hands),
        random.nextInt(3) == 0 ? 1 : 0,
        least + random.nextInt(least + 1),
        random.nextInt(4) == 0 ? 0 : 1,
        least + random.nextInt(least + 1),
        cooked && random.nextInt(3) == 0 ? 1 : 0,
        cooked,
        least + random.nextInt(least + 1),
        1 + random.nextInt(Math.min(2, hands)),
        least,
        least + random.nextInt(canning),
        least,
        random.nextInt(least + 1),
        least + random.nextInt(least + 1));
  }

  private static LoadWork onCanner(LoadWork l, int canner) {
    return new LoadWork(
        l.batch(),
        canner,
        l.release(),
        l.prepare(),
        l.prepareHands(),
        l.preparePots(),
        l.heatJars(),
        l.jarPots(),
        l.heatFood(),
        l.foodHands(),
        l.foodIsPrepared(),
        l.fill(),
        l.fillHands(),
        l.load(),
        l.canning(),
        l.unload(),
        l.refill(),
        l.preheat());
  }
}
