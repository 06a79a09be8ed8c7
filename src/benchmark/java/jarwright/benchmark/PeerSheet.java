package jarwright.benchmark;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import jarwright.label.JarLabel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * {@code PeerSheet html|fo N FILE}: the same labels for a browser or a formatter. Their codes are
 * drawn already, so a peer only lays out and writes.
 */
final class PeerSheet {
  private static final int COLUMNS = 3;
  private static final int ON_A_SIDE = 30;

  private static final String HTML_HEAD =
      "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>Labels</title><style>"
          + "@page{size:letter;margin:12.7mm 4.8mm}body{margin:0;font:8pt sans-serif}"
          + "table{break-after:page;border-spacing:0}td{width:66.7mm;height:25.4mm;padding:0}"
          + ".l{display:flex;height:25.4mm;overflow:hidden}b{font-size:11pt;display:block}"
          + "svg{width:23mm;height:23mm}</style><body>";

  private static final String FO_HEAD =
      "<fo:root xmlns:fo=\"http://www.w3.org/1999/XSL/Format\"><fo:layout-master-set>"
          + "<fo:simple-page-master master-name=\"s\" page-width=\"215.9mm\""
          + " page-height=\"279.4mm\" margin=\"12.7mm 4.8mm\"><fo:region-body/>"
          + "</fo:simple-page-master></fo:layout-master-set>"
          + "<fo:page-sequence master-reference=\"s\">"
          + "<fo:flow flow-name=\"xsl-region-body\" font-size=\"8pt\">";

  private final boolean html;
  private final StringBuilder out = new StringBuilder();

  private PeerSheet(boolean html) {
    this.html = html;
  }

  public static void main(String[] args) throws IOException, WriterException {
    PeerSheet sheet = new PeerSheet(args[0].equals("html"));
    sheet.write(Jars.labels(Integer.parseInt(args[1])));
    Files.writeString(Path.of(args[2]), sheet.out);
  }

  private void add(String inHtml, String inFo) {
    out.append(html ? inHtml : inFo);
  }

  private void write(List<JarLabel> labels) throws WriterException {
    add(HTML_HEAD, FO_HEAD);
    for (int i = 0; i < labels.size(); i++) {
      boolean last = i == labels.size() - 1;
      if (i % ON_A_SIDE == 0) {
        add("<table>", "<fo:table table-layout=\"fixed\" width=\"206mm\" break-after=\"page\">");
        add("", "<fo:table-body>");
      }
      if (i % COLUMNS == 0) {
        add("<tr>", "<fo:table-row height=\"25.4mm\">");
      }
      label(labels.get(i));
      if (i % COLUMNS == COLUMNS - 1 || last) {
        add("</tr>", "</fo:table-row>");
      }
      if (i % ON_A_SIDE == ON_A_SIDE - 1 || last) {
        add("</table>", "</fo:table-body></fo:table>");
      }
    }
    add("</body></html>", "</fo:flow></fo:page-sequence></fo:root>");
  }

  private void label(JarLabel label) throws WriterException {
    add("<td><div class=\"l\"><div><b>", "<fo:table-cell><fo:block font-size=\"11pt\">");
    out.append(label.product());
    add("</b>", "</fo:block><fo:block>");
    out.append(label.jar());
    add("<br>use by ", " use by ");
    out.append(label.useBy());
    add("</div>", "</fo:block><fo:block><fo:instream-foreign-object content-width=\"17mm\">");
    svg(label);
    add("</div></td>", "</fo:instream-foreign-object></fo:block></fo:table-cell>");
  }

  /** One path of runs, the usual way of drawing a code in SVG. */
  private void svg(JarLabel label) throws WriterException {
    ByteMatrix code = Encoder.encode(BareLabels.text(label), ErrorCorrectionLevel.M).getMatrix();
    int n = code.getWidth();
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"23mm\" height=\"23mm\"");
    out.append(" viewBox=\"-4 -4 ").append(n + 8).append(' ').append(n + 8).append("\"><path d=\"");
    for (int y = 0; y < n; y++) {
      for (int x = 0; x < n; x++) {
        int from = x;
        while (x < n && code.get(x, y) == 1) {
          x++;
        }
        if (x > from) {
          out.append('M').append(from).append(' ').append(y).append('h').append(x - from);
          out.append("v1h").append(from - x).append('z');
        }
      }
    }
    out.append("\"/></svg>");
  }
}
