package jarwright.pantry;

/**
 * The first event of a ledger.
 *
 * @param household a mark drawn by lot that tells this household's ledger from all others
 */
public record Opened(String household) implements Happening {
  public static final String KIND = "opened";

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public Detail detail() {
    return Detail.of("household", household);
  }

  static Opened from(Detail detail) {
    return new Opened(detail.need("household", t -> t));
  }
}
