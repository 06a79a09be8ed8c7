package jarwright.benchmark;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.Encoder;
import com.lowagie.text.Document;
import com.lowagie.text.PageSize;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfWriter;
import jarwright.label.JarLabel;
import jarwright.lot.QrText;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * The floor. {@code BareLabels draw N FILE}: words and boxes at fixed places by the PDF library
 * alone, no layout, no tags, no codes. {@code BareLabels encode|mask N}: the codes alone, every
 * mask tried, or one mask for all.
 */
final class BareLabels {
  private static final int ON_A_SIDE = 30;

  private BareLabels() {}

  static String text(JarLabel label) {
    return QrText.words(label.jar(), label.useBy(), label.coded().subList(0, 1)).get(0);
  }

  public static void main(String[] args) throws IOException, WriterException {
    List<JarLabel> labels = Jars.labels(Integer.parseInt(args[1]));
    if (args[0].equals("draw")) {
      draw(labels, Path.of(args[2]));
      return;
    }
    Map<EncodeHintType, ?> hints =
        args[0].equals("mask") ? Map.of(EncodeHintType.QR_MASK_PATTERN, 2) : Map.of();
    int corners = 0;
    for (JarLabel label : labels) {
      corners += Encoder.encode(text(label), ErrorCorrectionLevel.M, hints).getMatrix().get(0, 0);
    }
    if (corners != labels.size()) {
      throw new IllegalStateException("a code without its corner");
    }
  }

  private static void draw(List<JarLabel> labels, Path file) throws IOException {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      Document document = new Document(PageSize.LETTER);
      PdfWriter writer = PdfWriter.getInstance(document, out);
      document.open();
      BaseFont font = BaseFont.createFont(BaseFont.HELVETICA, BaseFont.CP1252, false);
      PdfContentByte to = writer.getDirectContent();
      for (int i = 0; i < labels.size(); i++) {
        if (i > 0 && i % ON_A_SIDE == 0) {
          document.newPage();
        }
        label(to, font, labels.get(i), 20 + i % 3 * 200f, 720 - i % ON_A_SIDE / 3 * 72f);
      }
      document.close();
    }
  }

  private static void label(
      PdfContentByte to, BaseFont font, JarLabel label, float x, float baseline) {
    List<String> lines =
        List.of(label.product(), label.jar().toString(), "use by " + label.useBy());
    for (int i = 0; i < lines.size(); i++) {
      to.beginText();
      to.setFontAndSize(font, i == 0 ? 11 : 8);
      to.setTextMatrix(x, baseline - 12 * i);
      to.showText(lines.get(i));
      to.endText();
    }
    to.rectangle(x + 130, baseline - 40, 60, 60);
    to.stroke();
  }
}
