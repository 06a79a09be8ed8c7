package jarwright.label;

import jarwright.files.LabelStocks;
import jarwright.lot.LotCode;
import jarwright.lot.UseBy;
import jarwright.page.LabelShape;
import jarwright.page.LabelStock;
import jarwright.page.PaperSize;
import jarwright.page.Registration;
import jarwright.page.Wording;
import jarwright.problem.Refused;
import jarwright.render.Printer;
import jarwright.render.WordBundle;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/** Labels of an invented household, and the stocks they are printed on. */
final class LabelSamples {
  static final LocalDate DAY = LocalDate.of(2026, 8, 24);
  static final Wording ENGLISH = WordBundle.load("en");
  static final List<String> FACTS =
      List.of(
          "Raw pack · quart",
          "Boiling water 45 min",
          "at 1,378 ft (420 m)",
          "1/2 tsp (2.5 mL) citric acid",
          "Fernhollow kitchen");

  private LabelSamples() {}

  /** The program's own stocks, and forms of label that none of them has. */
  static List<LabelStock> stocks() {
    PaperSize paper = PaperSize.LETTER;
    List<LabelStock> all = new ArrayList<>();
    try {
      all.addAll(LabelStocks.builtIn().all());
    } catch (IOException | Refused e) {
      throw new AssertionError(e);
    }
    all.add(new LabelStock("square-50", paper, LabelShape.RECT, 3, 5, 50, 50, 10, 10, 60, 52));
    all.add(new LabelStock("upright-30x60", paper, LabelShape.RECT, 6, 4, 30, 60, 10, 10, 32, 62));
    all.add(
        new LabelStock("strip-200x22", paper, LabelShape.STRIP, 1, 10, 200, 22, 5, 10, 200, 25));
    all.add(
        new LabelStock("strip-150x18", paper, LabelShape.STRIP, 1, 10, 150, 18, 5, 10, 150, 25));
    return all;
  }

  static LabelStock stock(String id) {
    return stocks().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  /** The names of all products of the tables. */
  static List<String> names(String file) {
    try (InputStream in = LabelSamples.class.getResourceAsStream("/jarwright/process/" + file);
        CSVParser parser =
            CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return parser.stream().map(row -> row.get("name")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** English words with Spanish hyphenation, for Spanish names. */
  static Wording spanishNames() {
    Map<String, String> texts = new TreeMap<>();
    for (String part : List.of("common", "label")) {
      Properties read = new Properties();
      try (InputStream in =
          LabelSamples.class.getResourceAsStream("/jarwright/words/" + part + "_en.properties")) {
        read.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      read.forEach((key, text) -> texts.put((String) key, (String) text));
    }
    return Wording.of(Locale.forLanguageTag("es"), texts);
  }

  /** A jar's label; months to use-by go round the year with its number. */
  static JarLabel label(String name, int number) {
    LotCode lot = new LotCode(LocalDate.of(2026, 1 + number % 12, 24), 'A');
    return new JarLabel(
        lot.jar(number),
        name,
        Optional.of(lot.packed()),
        UseBy.after(lot.packed(), UseBy.USUAL_MONTHS),
        FACTS,
        List.of(name, "Raw pack", "quart", "Boiling water", "45 min", "420 m", "citric acid"),
        Optional.empty(),
        Optional.empty());
  }

  /** The same with a code that holds no more than it must, since choosing codes takes long. */
  static JarLabel lean(String name, int number) {
    JarLabel full = label(name, number);
    return new JarLabel(
        full.jar(),
        full.product(),
        full.packed(),
        full.useBy(),
        full.facts(),
        List.of(),
        full.link(),
        full.coldDays());
  }

  static byte[] print(List<JarLabel> labels, LabelStock stock, Wording words) {
    return print(labels, stock, Registration.TRUE, LabelsSheet.Use.USUAL, words);
  }

  static byte[] print(
      List<JarLabel> labels,
      LabelStock stock,
      Registration registration,
      LabelsSheet.Use use,
      Wording words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      new Printer(Optional.empty())
          .pdf(LabelsSheet.of(labels, stock, registration, use, words, DAY), out);
    } catch (IOException | Refused e) {
      throw new AssertionError(e);
    }
    return out.toByteArray();
  }
}
