package jarwright.day;

import jarwright.water.Estimate;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * The tasks of one load with their lengths, not yet at any time.
 *
 * @param preparing one after the other, before the food is needed
 * @param jars on one burner, ending when filling starts
 * @param food on another burner, ending when filling starts
 * @param foodIsPrepared whether that is the food itself, prepared before
 * @param canning in the canner, without a pause, between loading and unloading
 */
record LoadTasks(
    CannerLoad load,
    List<Part> preparing,
    List<Part> jars,
    List<Part> food,
    boolean foodIsPrepared,
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
   * @param pots burners that it takes besides the ones for jars and food
   */
  record Part(TaskKind kind, Minutes minutes, int hands, int pots) {}

  /** The same as numbers, each estimate read in the given way. */
  LoadWork work(
      int batch, int canner, int release, boolean jarsOnStove, ToIntFunction<Estimate> way) {
    return new LoadWork(
        batch,
        canner,
        release,
        sum(preparing, way),
        preparing.stream().mapToInt(Part::hands).max().orElse(0),
        preparing.stream().mapToInt(Part::pots).max().orElse(0),
        sum(jars, way),
        jarsOnStove ? 1 : 0,
        sum(food, way),
        food.stream().mapToInt(Part::hands).max().orElse(0),
        foodIsPrepared,
        filling.minutes().read(way),
        filling.hands(),
        loading.minutes().read(way),
        sum(canning, way),
        unloading.minutes().read(way),
        refilling.minutes().read(way),
        preheating.minutes().read(way));
  }

  private static int sum(List<Part> parts, ToIntFunction<Estimate> way) {
    return parts.stream().mapToInt(p -> p.minutes().read(way)).sum();
  }
}
