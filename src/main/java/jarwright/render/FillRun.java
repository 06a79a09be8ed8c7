package jarwright.render;

import freemarker.core.Environment;
import freemarker.template.TemplateException;
import jarwright.page.TemplateFault;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

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
    FutureTask<Boolean> filling =
        new FutureTask<>(
            () -> {
              environment.process();
              return true;
            });
    Thread thread = new Thread(filling, "own template");
    thread.setDaemon(true);
    thread.start();
    try {
      await(template, filling);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException();
    } catch (ExecutionException e) {
      throw thrown(e.getCause());
    } finally {
      filling.cancel(true);
    }
  }

  private void await(String template, FutureTask<Boolean> filling)
      throws InterruptedException, ExecutionException {
    boolean done = false;
    for (long before = -1; !done; ) {
      try {
        done = filling.get(patience.toMillis(), TimeUnit.MILLISECONDS);
      } catch (TimeoutException e) {
        long now = limits.progress();
        if (now == before) {
          throw new TemplateFault(template, 0, 0, "the template goes round without an end");
        }
        before = now;
      }
    }
  }

  private static IOException thrown(Throwable cause) throws TemplateException {
    if (cause instanceof TemplateException fault) {
      throw fault;
    }
    if (cause instanceof RuntimeException fault) {
      throw fault;
    }
    if (cause instanceof Error fault) {
      throw fault;
    }
    return (IOException) cause;
  }
}
