package jarwright.render;

import freemarker.cache.FileTemplateLoader;
import jarwright.page.TemplateFault;
import java.io.File;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;

/** A household's folder of templates, of which none is larger than a template ever needs to be. */
final class OwnTemplates extends FileTemplateLoader {
  /** Some twenty times our largest. */
  private static final int MOST_BYTES = 300_000;

  OwnTemplates(Path folder) throws IOException {
    super(folder.toFile());
  }

  @Override
  public Reader getReader(Object template, String encoding) throws IOException {
    File file = (File) template;
    if (file.length() > MOST_BYTES) {
      throw new TemplateFault(
          file.getName(), 0, 0, "the template is larger than " + MOST_BYTES / 1_000 + " kB");
    }
    return super.getReader(template, encoding);
  }
}
