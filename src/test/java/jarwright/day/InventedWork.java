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
    boolean keeps = false;
    for (int i = 0; i < loads; i++) {
      if (of == null || random.nextInt(2) == 0) {
        batch++;
        of = load(batch, random.nextInt(canners), hands, least, handWork, canning);
        keeps = of.foodIsPrepared() && random.nextInt(2) == 0;
        all.add(of);
      } else {
        all.add(keeps ? living(of) : of);
      }
    }
    return new DayWork(numbered(all), hands, pots, random.nextInt(3) * least);
  }

  /** A later load of a batch that was cooked as one. */
  private static LoadWork living(LoadWork first) {
    return changed(first, first.canner(), List.of(), List.of(), first.foodPots());
  }

  /** Canners count up without a gap. */
  private static List<LoadWork> numbered(List<LoadWork> loads) {
    boolean onlySecond = loads.stream().allMatch(l -> l.canner() == 1);
    return onlySecond ? loads.stream().map(l -> onCanner(l, 0)).toList() : loads;
  }

  private LoadWork load(int batch, int canner, int hands, int least, int handWork, int canning) {
    boolean cooked = random.nextBoolean();
    int stirred = cooked && random.nextInt(3) == 0 ? 1 : 0;
    List<Stretch> prepare = new ArrayList<>();
    int work = least + random.nextInt(handWork);
    boolean soaks = random.nextInt(4) == 0;
    int pots = random.nextInt(3) == 0 && (cooked || !soaks) ? 1 : 0;
    prepare.add(new Stretch(work, 1 + random.nextInt(hands), pots));
    if (soaks) {
      prepare.add(new Stretch(least + random.nextInt(2 * least), 0, 0));
    }
    List<Stretch> food = new ArrayList<>();
    if (random.nextInt(6) > 0) {
      food.add(new Stretch(least + random.nextInt(least + 1), stirred, 1));
    }
    if (!food.isEmpty() && random.nextInt(6) == 0) {
      food.add(new Stretch(least, 0, random.nextInt(2)));
      food.add(new Stretch(least, stirred, 1));
    }
    return new LoadWork(
        batch,
        canner,
        random.nextInt(4) == 0 ? random.nextInt(3) * least : 0,
        prepare,
        soaks ? random.nextInt(2) * least : LoadWork.ANY_TIME,
        least + random.nextInt(least + 1),
        random.nextInt(4) == 0 ? 0 : 1,
        food,
        cooked,
        0,
        least + random.nextInt(least + 1),
        1 + random.nextInt(Math.min(2, hands)),
        least,
        least + random.nextInt(canning),
        least,
        random.nextInt(least + 1),
        least + random.nextInt(least + 1));
  }

  private static LoadWork onCanner(LoadWork l, int canner) {
    return changed(l, canner, l.prepare(), l.food(), l.kept());
  }

  private static LoadWork changed(
      LoadWork l, int canner, List<Stretch> prepare, List<Stretch> food, int kept) {
    return new LoadWork(
        l.batch(),
        canner,
        l.release(),
        prepare,
        prepare.isEmpty() ? LoadWork.ANY_TIME : l.stands(),
        l.heatJars(),
        l.jarPots(),
        food,
        l.foodIsPrepared(),
        kept,
        l.fill(),
        l.fillHands(),
        l.load(),
        l.canning(),
        l.unload(),
        l.refill(),
        l.preheat());
  }
}
