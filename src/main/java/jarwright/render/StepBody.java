package jarwright.render;

import java.util.ArrayList;
import java.util.List;

/**
 * The blocks of a step. Its figure stands at the right end of the first block's first line, and a
 * lone brief caution on that line too where there is room.
 */
final class StepBody {
  /** Room between a step's words and a caution on their line. */
  private static final double ASIDE = Units.pt(4);

  private final Stack lead;
  private final Stack rest;
  private final Response response;
  private final Caution aside;

  private StepBody(Stack lead, Stack rest, Response response, Caution aside) {
    this.lead = lead;
    this.rest = rest;
    this.response = response;
    this.aside = aside;
  }

  /** Reads the step's content; {@code response} may be null. */
  static StepBody read(Blocks blocks, Element element, Style style, Response response) {
    List<Block> all = new ArrayList<>();
    blocks.read(element, style, all::add);
    int first = Math.min(1, all.size());
    boolean warns = all.size() == 2 && all.get(1) instanceof Caution only && only.isBrief();
    return new StepBody(
        new Stack(element, all.subList(0, first), false),
        new Stack(element, all.subList(first, all.size()), false),
        response,
        warns ? (Caution) all.get(1) : null);
  }

  double firstMiddle(double width) {
    return lead.firstMiddle(leadWidth(width));
  }

  double height(double width) {
    double below = cautionBeside(width) ? 0 : rest.height(width);
    return leadHeight(width) + between(width) + below;
  }

  void paint(Side side, double x, double top, double width) {
    double wide = leadWidth(width);
    lead.paint(side, x, top, wide);
    if (response != null) {
      response.paint(side, x, top, width, lead.height(wide), lead.firstMiddle(wide));
    }
    if (cautionBeside(width)) {
      double own = aside.natural() + 0.5;
      double down = lead.firstMiddle(wide) - aside.firstMiddle(own);
      aside.paint(side, x + lead.natural() + ASIDE, top + down, own);
    } else {
      rest.paint(side, x, top + leadHeight(width) + between(width), width);
    }
  }

  private double leadWidth(double width) {
    return response == null ? width : response.leaves(width);
  }

  private double leadHeight(double width) {
    double tall = lead.height(leadWidth(width));
    return response == null ? tall : response.heightWith(tall, width);
  }

  private double between(double width) {
    return rest.isEmpty() || cautionBeside(width) ? 0 : Math.max(lead.after(), rest.before());
  }

  private boolean cautionBeside(double width) {
    return aside != null && lead.natural() + ASIDE + aside.natural() + 0.5 <= leadWidth(width);
  }
}
