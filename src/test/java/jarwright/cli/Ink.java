package jarwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where a print-out has its letters. */
final class Ink {
  private Ink() {}

  /** Left edge and base of the first letter, in pt from the upper left corner. */
  static float[] firstLetter(Path file) throws IOException {
    List<TextPosition> letters = new ArrayList<>();
    PDFTextStripper reader =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition letter) {
            letters.add(letter);
          }
        };
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      reader.getText(pdf);
    }
    return new float[] {letters.get(0).getX(), letters.get(0).getY()};
  }
}
