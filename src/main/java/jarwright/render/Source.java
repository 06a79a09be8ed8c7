package jarwright.render;

import freemarker.core.Environment;
import freemarker.core.TemplateProcessingTracer;
import jarwright.page.Sheet;
import jarwright.page.TemplateFault;
import java.io.StringWriter;
import java.io.Writer;

/** A filled sheet template, and for each of its characters the template line that wrote it. */
final class Source {
  private final Templates templates;
  private final Sheet sheet;
  private final String text;

  Source(Templates templates, Sheet sheet) {
    this.templates = templates;
    this.sheet = sheet;
    StringWriter out = new StringWriter(16_384);
    templates.fill(sheet, out);
    this.text = out.toString();
  }

  String text() {
    return text;
  }

  /** The fault at that character of the filled template, told by the template's own line. */
  TemplateFault fault(int offset, String what) {
    Watch watch = watchUntil(offset);
    return new TemplateFault(watch.template, watch.line, 0, what);
  }

  /** The place of that character, as {@code labels.ftl:12}. */
  String place(int offset) {
    Watch watch = watchUntil(offset);
    return watch.template + ":" + watch.line;
  }

  /** Filling again costs nothing on the way that goes well, unlike keeping a map of lines. */
  private Watch watchUntil(int offset) {
    Watch watch = new Watch(sheet.template(), offset);
    templates.fill(sheet, watch, environment -> environment.setTemplateProcessingTracer(watch));
    return watch;
  }

  private static final class Watch extends Writer implements TemplateProcessingTracer {
    private final int target;
    private int written;
    private boolean found;
    private String template;
    private int line = 1;

    Watch(String template, int target) {
      this.template = template;
      this.target = target;
    }

    @Override
    public void enterElement(Environment environment, TracedElement element) {
      if (!found && element.getTemplate() != null) {
        template = element.getTemplate().getSourceName();
        line = element.getBeginLine();
      }
    }

    @Override
    public void exitElement(Environment environment, TracedElement element) {}

    @Override
    public void write(char[] chars, int from, int length) {
      if (!found && written + length > target) {
        for (int i = 0; i < target - written; i++) {
          line += chars[from + i] == '\n' ? 1 : 0;
        }
        found = true;
      }
      written += length;
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }
}
