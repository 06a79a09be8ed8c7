package jarwright.benchmark;

import jarwright.files.LabelStocks;
import jarwright.label.LabelsSheet;
import jarwright.page.LabelStock;
import jarwright.page.Registration;
import jarwright.problem.Refused;
import jarwright.render.Printer;
import jarwright.render.WordBundle;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * {@code PrintLabels N FILE}: a PDF of N jar labels on the usual stock, each with a code of its
 * own.
 */
final class PrintLabels {
  static final String STOCK = "letter-30up";

  private PrintLabels() {}

  public static void main(String[] args) throws IOException, Refused {
    LabelStock stock =
        LabelStocks.builtIn().all().stream()
            .filter(s -> s.id().equals(STOCK))
            .findFirst()
            .orElseThrow();
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(Path.of(args[1])))) {
      new Printer(Optional.empty())
          .pdf(
              LabelsSheet.of(
                  Jars.labels(Integer.parseInt(args[0])),
                  stock,
                  Registration.TRUE,
                  LabelsSheet.Use.USUAL,
                  WordBundle.load("en"),
                  LocalDate.of(2026, 8, 24)),
              out);
    }
  }
}
