package jarwright.process;

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
    String note) {}
