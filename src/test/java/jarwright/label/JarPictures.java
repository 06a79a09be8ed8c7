package jarwright.label;

import jarwright.label.JarCamera.Shot;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.AffineTransformOp;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Pictures as a household takes them: one jar in good and bad conditions, and whole shelves.
 *
 * @param what the conditions
 * @param codes the texts that are in the picture
 */
record JarPictures(String what, BufferedImage picture, List<String> codes) {
  private static final List<String> STOCKS =
      List.of("letter-30up", "a4-24up-70-butt", "square-50", "strip-150x18");
  private static final int DPI = 300;
  private static final Shot SHELF = Shot.KITCHEN.tilt(10).sharp(8);

  static List<JarPictures> all() {
    List<JarPictures> all = new ArrayList<>();
    for (String stock : STOCKS) {
      PrintedCodes jar = sheet(stock, 1).get(0);
      conditions().forEach((what, shot) -> all.add(one(stock + ", " + what, jar, shot)));
      for (int degrees : new int[] {25, 45, 90, 180}) {
        all.add(heldAt(stock, degrees));
      }
      all.add(shelf(stock));
      all.add(dimShelf(stock));
      all.add(shelf(stock + ", shelf from afar", sheet(stock, 8), SHELF.tilt(5).sharp(5.5)));
    }
    return all;
  }

  static JarPictures heldAt(String stock, int degrees) {
    JarPictures upright = one(stock, sheet(stock, 1).get(0), Shot.KITCHEN);
    return new JarPictures(
        stock + ", held at " + degrees + "°", turned(upright.picture(), degrees), upright.codes());
  }

  static JarPictures shelf(String stock) {
    return shelf(stock + ", shelf", sheet(stock, 8), SHELF);
  }

  static JarPictures dimShelf(String stock) {
    return shelf(stock + ", dim shelf", sheet(stock, 8), SHELF.contrast(0.3).noise(6));
  }

  private static Map<String, Shot> conditions() {
    Shot k = Shot.KITCHEN;
    Map<String, Shot> shots = new LinkedHashMap<>();
    shots.put("kitchen", k);
    shots.put("tilted 38°", k.tilt(38));
    shots.put("turned 34°", k.turn(34));
    shots.put("out of focus", k.blur(0.16));
    shots.put("noisy", k.noise(25));
    shots.put("dim", k.contrast(0.25).noise(5));
    shots.put("very dim", k.contrast(0.12).noise(3));
    shots.put("glare", k.glare(0.9));
    shots.put("far", k.tilt(10).sharp(5));
    shots.put("near", k.sharp(25));
    shots.put("squeezed JPEG", k.jpeg(0.08));
    return shots;
  }

  private static List<PrintedCodes> sheet(String stock, int jars) {
    List<JarLabel> labels = new ArrayList<>();
    for (int i = 1; i <= jars; i++) {
      labels.add(LabelSamples.label("Plums, halved or whole", i));
    }
    return PrintedCodes.of(labels, LabelSamples.stock(stock), DPI);
  }

  private static JarPictures one(String what, PrintedCodes code, Shot shot) {
    return new JarPictures(
        what, JarCamera.picture(code.seen(), shot), List.of(code.label().jar().toString()));
  }

  private static BufferedImage turned(BufferedImage picture, int degrees) {
    int w = picture.getWidth();
    int side = (int) (w * 1.5);
    BufferedImage out = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D to = out.createGraphics();
    to.setColor(Color.GRAY);
    to.fillRect(0, 0, side, side);
    AffineTransform turn =
        AffineTransform.getRotateInstance(Math.toRadians(degrees), side / 2.0, side / 2.0);
    turn.translate((side - w) / 2.0, (side - w) / 2.0);
    to.drawImage(picture, new AffineTransformOp(turn, AffineTransformOp.TYPE_BILINEAR), 0, 0);
    to.dispose();
    return out;
  }

  /** Two rows of jars, each turned a little another way. */
  private static JarPictures shelf(String what, List<PrintedCodes> codes, Shot shot) {
    List<BufferedImage> jars = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < codes.size(); i++) {
      jars.add(JarCamera.picture(codes.get(i).seen(), shot.turn(-14 + 4 * i)));
      names.add(codes.get(i).label().jar().toString());
    }
    int side = jars.get(0).getWidth();
    int step = side + side / 3;
    BufferedImage out = new BufferedImage(4 * step, 2 * step, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D to = out.createGraphics();
    to.setColor(new Color(60, 60, 60));
    to.fillRect(0, 0, out.getWidth(), out.getHeight());
    for (int i = 0; i < jars.size(); i++) {
      to.drawImage(jars.get(i), i % 4 * step + 10 + 3 * i, i / 4 * step + 20 - i, null);
    }
    to.dispose();
    return new JarPictures(what, out, names);
  }
}
