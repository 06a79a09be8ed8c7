package jarwright.render;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.ConditionalTemplateConfigurationFactory;
import freemarker.cache.FileNameGlobMatcher;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.TemplateConfigurationFactory;
import freemarker.cache.TemplateLoader;
import freemarker.core.Environment;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core.TemplateConfiguration;
import freemarker.core.XMLOutputFormat;
import freemarker.log.Logger;
import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateNotFoundException;
import freemarker.template.Version;
import jarwright.page.Sheet;
import jarwright.page.TemplateFault;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Fills templates: the user's own first, else those in the jar. A template sees the sheet's view
 * and words, and nothing else: no Java, no files outside its folder.
 */
final class Templates {
  private static final Version BEHAVES_AS = quiet();

  /** Set on first use: a command that prints nothing never pays for it. */
  private Configuration configuration;

  private final Optional<Path> own;
  private final Duration patience;

  /**
   * @param patience with a household's own template that does nothing that could be counted
   */
  Templates(Optional<Path> own, Duration patience) {
    this.own = own;
    this.patience = patience;
  }

  /** Writes the filled template. */
  void fill(Sheet sheet, Writer out) {
    fill(sheet, out, environment -> {});
  }

  /** Fills the template once more, watched, to learn which of its lines wrote what. */
  void fill(Sheet sheet, Writer out, Consumer<Environment> watch) {
    try {
      Template template = configuration().getTemplate(sheet.template());
      Map<String, Object> view = new HashMap<>(sheet.view());
      WordFunctions.addTo(view, sheet.words());
      process(template, view, out, watch);
    } catch (TemplateNotFoundException e) {
      throw new TemplateFault(e.getTemplateName(), 0, 0, "there is no template of that name");
    } catch (ParseException e) {
      throw new TemplateFault(
          e.getTemplateName(), e.getLineNumber(), e.getColumnNumber(), oneSentence(e));
    } catch (TemplateException e) {
      throw fault(sheet, e);
    } catch (StackOverflowError e) {
      throw new TemplateFault(
          sheet.template(), 0, 0, "it calls itself without an end, or nests too deeply");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void process(
      Template template, Map<String, Object> view, Writer out, Consumer<Environment> watch)
      throws TemplateException, IOException {
    if (own.isEmpty()) {
      Environment environment = template.createProcessingEnvironment(view, out);
      watch.accept(environment);
      environment.process();
      return;
    }
    FillLimits limits = new FillLimits(template.getName(), out);
    Environment environment = template.createProcessingEnvironment(view, limits);
    environment.setTemplateProcessingTracer(limits);
    watch.accept(environment);
    new FillRun(limits, patience).process(template.getName(), environment);
  }

  /** Faults are told once, as faults; the library's own log must be off before it is first used. */
  @SuppressWarnings("deprecation") // the other way is a system property, which is everybody's
  private static Version quiet() {
    try {
      Logger.selectLoggerLibrary(Logger.LIBRARY_NONE);
    } catch (ClassNotFoundException e) {
      throw new LinkageError("the template library lacks its own logger", e);
    }
    return Configuration.VERSION_2_3_34;
  }

  private static TemplateFault fault(Sheet sheet, TemplateException e) {
    String name = e.getTemplateSourceName() == null ? sheet.template() : e.getTemplateSourceName();
    int line = e.getLineNumber() == null ? 0 : e.getLineNumber();
    int column = e.getColumnNumber() == null ? 0 : e.getColumnNumber();
    if (e instanceof InvalidReferenceException) {
      return new TemplateFault(
          name,
          line,
          column,
          "there is no value "
              + e.getBlamedExpressionString()
              + "; check its spelling, or give a default as ${"
              + e.getBlamedExpressionString()
              + "!\"none\"}");
    }
    if (e.getCause() instanceof TemplateFault told) {
      return told;
    }
    if (e.getCause() instanceof IllegalArgumentException cause) {
      return new TemplateFault(name, line, column, cause.getMessage());
    }
    return new TemplateFault(name, line, column, firstSentence(e.getMessageWithoutStackTop()));
  }

  private static String oneSentence(ParseException e) {
    return "the template cannot be read: " + firstSentence(e.getEditorMessage());
  }

  /** The library adds help, lists and its own stack, which are no use beside the place. */
  private static String firstSentence(String message) {
    String text = message == null ? "it failed without a message" : message.strip();
    int end = text.indexOf('\n');
    text = end < 0 ? text : text.substring(0, end);
    end = text.indexOf(". ");
    text = end < 0 ? text : text.substring(0, end);
    return text.replaceAll("[:.\\s]+$", "");
  }

  private Configuration configuration() throws IOException {
    if (configuration == null) {
      configuration = configure();
    }
    return configuration;
  }

  private Configuration configure() throws IOException {
    Configuration made = new Configuration(BEHAVES_AS);
    made.setTemplateLoader(loader());
    made.setLocalizedLookup(false);
    made.setLocale(Locale.ROOT);
    made.setDefaultEncoding("UTF-8");
    made.setNumberFormat("computer");
    made.setBooleanFormat("c");
    made.setObjectWrapper(new SimpleObjectWrapper(BEHAVES_AS));
    made.setOutputFormat(XMLOutputFormat.INSTANCE);
    made.setTemplateConfigurations(webPagesEscapeAsHtml());
    made.setAPIBuiltinEnabled(false);
    made.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    made.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    made.setLogTemplateExceptions(false);
    made.setWrapUncheckedExceptions(true);
    return made;
  }

  private static TemplateConfigurationFactory webPagesEscapeAsHtml() {
    TemplateConfiguration html = new TemplateConfiguration();
    html.setOutputFormat(HTMLOutputFormat.INSTANCE);
    return new ConditionalTemplateConfigurationFactory(new FileNameGlobMatcher("*.html.ftl"), html);
  }

  private TemplateLoader loader() throws IOException {
    TemplateLoader packed = new ClassTemplateLoader(Templates.class.getClassLoader(), "templates");
    if (own.isEmpty()) {
      return packed;
    }
    Path folder = own.get();
    if (!Files.isDirectory(folder)) {
      throw new TemplateFault(folder.toString(), 0, 0, "there is no such folder of templates");
    }
    return new MultiTemplateLoader(new TemplateLoader[] {new OwnTemplates(folder), packed});
  }
}
