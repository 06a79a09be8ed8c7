package jarwright.web;

import jarwright.lot.LotCode;
import jarwright.pantry.Jar;
import jarwright.record.Links;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The addresses of pages below one root. A jar's ends as the address in its QR code does, so that a
 * copy of the site on any web server answers it too.
 *
 * @param root put before each address, as {@code ../} or {@code /}
 * @param file put after a folder's, as {@code index.html}, or nothing
 */
record SiteLinks(String root, String file) implements Links {
  static final SiteLinks SERVED = new SiteLinks("/", "");

  @Override
  public String index() {
    return root + file;
  }

  @Override
  public String lot(LotCode lot) {
    return root + lot + ended();
  }

  @Override
  public Optional<String> jar(Jar jar) {
    return Optional.of(root + folder(jar) + ended());
  }

  private String ended() {
    return file.isEmpty() ? "" : "/" + file;
  }

  /** Without a slash at its end. */
  static String folder(Jar jar) {
    Optional<LocalDate> useBy = jar.facts().useBy();
    return jar.id() + useBy.map(d -> "/USE-BY-" + d).orElse("");
  }
}
