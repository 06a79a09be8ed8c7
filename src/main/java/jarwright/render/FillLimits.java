package jarwright.render;

import freemarker.core.Environment;
import freemarker.core.TemplateProcessingTracer;
import jarwright.page.TemplateFault;
import java.io.IOException;
import java.io.Writer;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Ends the filling of a household's own template that goes round without an end, or writes more
 * than any sheet holds.
 */
final class FillLimits extends Writer implements TemplateProcessingTracer {
  /** Some twenty times what 10,000 labels take. */
  private static final int MOST_ELEMENTS = 10_000_000;

  private static final int MOST_CHARACTERS = 32_000_000;

  private final Writer out;
  private String template;
  private int line;
  private int elements;
  private long written;

  /** Seen by the thread that waits for the filling. */
  private final AtomicLong progress = new AtomicLong();

  FillLimits(String template, Writer out) {
    this.template = template;
    this.out = out;
  }

  /** Grows as long as anything is done. */
  long progress() {
    return progress.get();
  }

  @Override
  public void enterElement(Environment environment, TracedElement element) {
    // What an empty template is made of belongs to none.
    if (element.getTemplate() != null) {
      template = element.getTemplate().getSourceName();
      line = element.getBeginLine();
    }
    elements++;
    progress.lazySet(elements + written);
    if (elements > MOST_ELEMENTS) {
      throw new TemplateFault(template, line, 0, "the template goes round here without an end");
    }
  }

  @Override
  public void exitElement(Environment environment, TracedElement element) {}

  @Override
  public void write(char[] chars, int from, int length) throws IOException {
    written += length;
    progress.lazySet(elements + written);
    if (written > MOST_CHARACTERS) {
      throw new TemplateFault(template, line, 0, "the template writes more than a sheet can hold");
    }
    out.write(chars, from, length);
  }

  @Override
  public void flush() throws IOException {
    out.flush();
  }

  @Override
  public void close() throws IOException {
    out.close();
  }
}
