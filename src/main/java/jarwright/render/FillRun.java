package jarwright.render;

import freemarker.core.Environment;
import freemarker.template.TemplateException;
import jarwright.page.TemplateFault;
import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.ExecutionException;

/**
 * The filling of a household's own template, in a thread that is left to itself where it goes round
 * in silence: an endless list without a body reaches no element that could be counted.
 */
final class FillRun {
  /** So long nothing is silent that ever comes to an end, on any machine. */
  static final Duration PATIENCE = Duration.ofSeconds(10);

  private final FillLimits limits;
  private final Duration patience;

  FillRun(FillLimits limits, Duration patience) {
    this.limits = limits;
    this.patience = patience;
  }

  /** Fills to the end, and throws what the filling throws. */
  void process(String template, Environment environment) throws TemplateException, IOException {
    Meanwhile<Boolean> filling =
        Meanwhile.start(
            "own template",
            () -> {
              environment.process();
              return true;
            });
    try {
      for (long before = -1; !filling.endsWithin(patience); ) {
        long now = limits.progress();
        if (now == before) {
          throw new TemplateFault(template, 0, 0, "the template goes round without an end");
        }
        before = now;
      }
      filling.outcome();
    } catch (ExecutionException e) {
      throw (TemplateException) e.getCause();
    } finally {
      filling.stop();
    }
  }
}
