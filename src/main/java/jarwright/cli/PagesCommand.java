package jarwright.cli;

import jarwright.files.OutputFolder;
import jarwright.problem.Refused;
import jarwright.record.RecordPages;
import jarwright.render.Printer;
import jarwright.render.WordBundle;
import jarwright.web.Site;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.apache.commons.cli.Options;

/** The batch records as pages in a folder, to be read without any server. */
final class PagesCommand implements Command {
  private static final String OUT = "output";
  private static final String TEMPLATES = "templates";
  private static final String USUAL = "print/pages";

  @Override
  public String name() {
    return "pages";
  }

  @Override
  public String arguments() {
    return "[-o DIR]";
  }

  @Override
  public String summary() {
    return "the records of all jars as pages that open without a server";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.withValue("o", OUT, "DIR", "where to write; else " + USUAL))
        .addOption(CommonOptions.withValue(null, TEMPLATES, "DIR", "your own templates"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    if (!call.arguments().isEmpty()) {
      throw new Usage("pages takes no arguments; -o DIR says where to write");
    }
    Books books = Books.open(call);
    RecordPages pages =
        new RecordPages(
            WordBundle.load(PageManner.language(books.kitchen())),
            PageManner.of(books.kitchen()),
            books.now());
    Path out = call.path(OUT).orElseGet(() -> call.surroundings().resolve(USUAL));
    Site site = new Site(pages, new Printer(call.path(TEMPLATES)));
    Map<String, byte[]> files = site.files(new FiledStock(books.house(), books.events()));
    new OutputFolder(out).write(files);
    call.tell("wrote " + files.size() + " pages; open " + out.resolve(Site.INDEX));
  }
}
