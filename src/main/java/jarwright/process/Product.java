package jarwright.process;

import java.util.List;

/**
 * A food that the guide has a table for.
 *
 * @param id as plans name it
 * @param guide chapter of the guide, 2 to 7
 * @param category kind of food, as {@code fruit}, {@code tomato}, {@code vegetables}
 * @param note remark of the transcription, may be empty
 */
public record Product(
    String id,
    String name,
    int guide,
    String category,
    HeadspaceRule headspace,
    AcidRule acid,
    SaltRule salt,
    ProduceNeed produce,
    String note) {
  private static final String DENSE = "unsealed=freeze-or-refrigerate";
  private static final int JAMS_AND_JELLIES = 7;

  /**
   * Whether a formula is cooked in whole ones, one after the other: a double batch of jam or jelly
   * does not always gel (AIB 539, 2015, Guide 7: "do not double", 6 to 8 cups of juice at a time).
   */
  public boolean isCookedSingly() {
    return guide == JAMS_AND_JELLIES;
  }

  /** Whether it is too dense to be canned again where a jar did not seal. */
  public boolean isDense() {
    return List.of(note.split("; ")).contains(DENSE);
  }
}
