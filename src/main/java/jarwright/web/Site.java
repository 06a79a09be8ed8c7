package jarwright.web;

import jarwright.page.Sheet;
import jarwright.pantry.Jar;
import jarwright.pantry.Lot;
import jarwright.problem.Refused;
import jarwright.record.LotRecord;
import jarwright.record.RecordPages;
import jarwright.render.Printer;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** The record pages as files that need neither a server nor each other to be read. */
public final class Site {
  /** The page to begin with. */
  public static final String INDEX = "index.html";

  private final RecordPages pages;
  private final Printer printer;

  public Site(RecordPages pages, Printer printer) {
    this.pages = pages;
    this.printer = printer;
  }

  /**
   * All pages by file name, folders in it divided by {@code /}: the index, one for each lot and one
   * for each jar. The same stock gives the same bytes.
   *
   * @throws Refused where a batch record is damaged
   */
  public Map<String, byte[]> files(Stock stock) throws IOException, Refused {
    Map<String, byte[]> files = new LinkedHashMap<>();
    put(files, "", links -> pages.index(stock.pantry(), links));
    for (Lot lot : stock.pantry().lots()) {
      LotRecord record = stock.record(lot);
      put(files, lot.code() + "/", links -> pages.lot(record, links));
      for (Jar jar : lot.jars()) {
        put(files, SiteLinks.folder(jar) + "/", links -> pages.jar(record, jar, links));
      }
    }
    return files;
  }

  private interface Page {
    Sheet sheet(SiteLinks links);
  }

  private void put(Map<String, byte[]> files, String folder, Page page) {
    int depth = (int) folder.chars().filter(c -> c == '/').count();
    files.put(folder + INDEX, printer.html(page.sheet(new SiteLinks("../".repeat(depth), INDEX))));
  }
}
