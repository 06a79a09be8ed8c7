package jarwright.page;

import java.util.Locale;

/** Something that may not be left out and has no room on its label, page or box. */
public final class DoesNotFit extends PrintFault {
  private static final long serialVersionUID = 1L;

  private final String what;
  private final double needs;
  private final double has;

  /**
   * What is too large.
   *
   * @param what the thing and its place in the template, as {@code labels.ftl:12: the QR code}
   * @param needs the least millimetres it takes
   * @param has the millimetres there are
   */
  public DoesNotFit(String what, double needs, double has) {
    super(
        String.format(
            Locale.ROOT, "%s does not fit: it needs %.1f mm and has %.1f mm", what, needs, has));
    this.what = what;
    this.needs = needs;
    this.has = has;
  }

  /** The thing and its place. */
  public String what() {
    return what;
  }

  /** The least millimetres it takes. */
  public double needs() {
    return needs;
  }

  /** The millimetres there are. */
  public double has() {
    return has;
  }
}
