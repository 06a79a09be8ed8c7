package jarwright.render;

import freemarker.core.Environment;
import freemarker.core.TemplateProcessingTracer;
import jarwright.page.Sheet;
import jarwright.page.TemplateFault;
import java.io.Reader;
import java.io.Writer;
import java.nio.ByteBuffer;

/**
 * A sheet template being filled by a thread of its own while its text is read, and for each of its
 * characters the template line that wrote it.
 */
final class Source implements AutoCloseable {
  private static final long PRIME = 0x100000001b3L;

  private final Templates templates;
  private final Sheet sheet;
  private final Pipe pipe = new Pipe(this::digest);
  private final Thread filler;
  private long first = 0xcbf29ce484222325L;
  private long second = 0x84222325cbf29ce4L;

  Source(Templates templates, Sheet sheet) {
    this.templates = templates;
    this.sheet = sheet;
    Sheet.About about = sheet.about();
    for (String fact :
        new String[] {
          sheet.template(),
          about.title(),
          about.subject(),
          String.join("\n", about.keywords()),
          about.created().toString(),
          sheet.words().language()
        }) {
      digest(fact.toCharArray(), 0, fact.length());
    }
    filler = new Thread(() -> pipe.fill(out -> templates.fill(sheet, out)), "template");
    filler.setDaemon(true);
    filler.start();
  }

  /** The filled template, to be read once, by one reader. */
  Reader text() {
    return pipe;
  }

  private void digest(char[] text, int from, int length) {
    for (int i = from; i < from + length; i++) {
      first = (first ^ text[i]) * PRIME;
      second = (second ^ text[i]) * PRIME;
    }
  }

  /**
   * Sixteen bytes that differ where the text does (FNV-1a, twice with other seeds), once it is read
   * to its end.
   */
  byte[] identifier() {
    return ByteBuffer.allocate(16).putLong(first).putLong(second).array();
  }

  /** Ends the filling, wherever it is. */
  @Override
  public void close() {
    filler.interrupt();
    try {
      filler.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Which character a place is asked for. */
  enum Aim {
    /** The one at the offset. */
    HERE,
    /** The last {@code <} before it. */
    TAG_BEFORE,
    /** The first from there on that is no blank. */
    WORD_FROM
  }

  /** The fault at that character of the filled template, told by the template's own line. */
  TemplateFault fault(Aim aim, int offset, String what) {
    Watch watch = watch(aim, offset);
    return new TemplateFault(watch.template, watch.line, 0, what);
  }

  /** The place of that character, as {@code labels.ftl:12}. */
  String place(Aim aim, int offset) {
    Watch watch = watch(aim, offset);
    return watch.template + ":" + watch.line;
  }

  /** Filling again costs nothing on the way that goes well, unlike keeping a map of lines. */
  private Watch watch(Aim aim, int offset) {
    close();
    Watch watch = new Watch(sheet.template(), aim, offset);
    templates.fill(sheet, watch, environment -> environment.setTemplateProcessingTracer(watch));
    return watch;
  }

  private static final class Watch extends Writer implements TemplateProcessingTracer {
    private final Aim aim;
    private final int target;
    private int written;
    private boolean settled;
    private String nowTemplate;
    private int nowLine = 1;
    private String template;
    private int line = 1;

    Watch(String template, Aim aim, int target) {
      this.template = template;
      this.nowTemplate = template;
      this.aim = aim;
      this.target = target;
    }

    @Override
    public void enterElement(Environment environment, TracedElement element) {
      if (element.getTemplate() == null) {
        return;
      }
      nowTemplate = element.getTemplate().getSourceName();
      nowLine = element.getBeginLine();
    }

    @Override
    public void exitElement(Environment environment, TracedElement element) {}

    @Override
    public void write(char[] chars, int from, int length) {
      for (int i = from; i < from + length && !settled; i++) {
        look(chars[i], written + i - from);
        nowLine += chars[i] == '\n' ? 1 : 0;
      }
      written += length;
    }

    /** Past the last character the place is that of the last one. */
    private void look(char c, int offset) {
      boolean wanted =
          switch (aim) {
            case HERE -> offset <= target;
            case TAG_BEFORE -> offset < target && c == '<';
            case WORD_FROM -> offset <= target || c > ' ';
          };
      if (wanted) {
        template = nowTemplate;
        line = nowLine;
      }
      settled =
          switch (aim) {
            case HERE, TAG_BEFORE -> offset >= target;
            case WORD_FROM -> offset >= target && c > ' ';
          };
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }
}
