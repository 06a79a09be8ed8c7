package jarwright.day;

import jarwright.water.Estimate;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.ToIntFunction;

/**
 * The tasks of one load with their lengths, not yet at any time.
 *
 * @param preparing one after the other, before the food is needed
 * @param stands most minutes that what is prepared may stand beyond its waits; {@link
 *     LoadWork#ANY_TIME} where that is no matter
 * @param jars on one burner, ending when filling starts
 * @param food on other burners, ending when filling starts; empty where nothing is heated for it
 * @param foodIsPrepared whether that is the food itself, prepared before
 * @param kept burners on which food cooked for a load before is kept hot; 0 where there is none
 * @param canning in the canner, without a pause, between loading and unloading
 */
record LoadTasks(
    CannerLoad load,
    List<Part> preparing,
    int stands,
    List<Part> jars,
    List<Part> food,
    boolean foodIsPrepared,
    int kept,
    Part filling,
    Part preheating,
    Part loading,
    List<Part> canning,
    Part unloading,
    Part refilling) {
  LoadTasks {
    preparing = List.copyOf(preparing);
    jars = List.copyOf(jars);
    food = List.copyOf(food);
    canning = List.copyOf(canning);
  }

  /**
   * One task.
   *
   * @param hands pairs of hands that it takes
   * @param pots burners that it takes besides the canner's and the jars'
   * @param step place of the step that tells of it among all steps of the product; empty where none
   *     does
   */
  record Part(TaskKind kind, Minutes minutes, int hands, int pots, OptionalInt step) {
    Part(TaskKind kind, Minutes minutes, int hands, int pots) {
      this(kind, minutes, hands, pots, OptionalInt.empty());
    }

    private Stretch stretch(ToIntFunction<Estimate> way) {
      return new Stretch(minutes.read(way), hands, pots);
    }
  }

  /** The same as numbers, each estimate read in the given way. */
  LoadWork work(
      int batch, int canner, int release, boolean jarsOnStove, ToIntFunction<Estimate> way) {
    return new LoadWork(
        batch,
        canner,
        release,
        stretches(preparing, way),
        stands,
        jars.stream().mapToInt(p -> p.minutes().read(way)).sum() + early(way),
        jarsOnStove ? 1 : 0,
        stretches(food, way),
        foodIsPrepared,
        kept,
        filling.minutes().read(way),
        filling.hands(),
        loading.minutes().read(way),
        canning.stream().mapToInt(p -> p.minutes().read(way)).sum(),
        unloading.minutes().read(way),
        refilling.minutes().read(way),
        preheating.minutes().read(way) + early(way));
  }

  /**
   * Minutes by which the first jars are filled before the rest, where recipes are cooked one after
   * the other: so much sooner jars and canner are hot.
   */
  private int early(ToIntFunction<Estimate> way) {
    int early = 0;
    boolean filled = false;
    for (Part part : food) {
      filled |= part.kind() == TaskKind.FILL;
      early += filled ? part.minutes().read(way) : 0;
    }
    return early;
  }

  private static List<Stretch> stretches(List<Part> parts, ToIntFunction<Estimate> way) {
    return parts.stream().map(p -> p.stretch(way)).toList();
  }
}
