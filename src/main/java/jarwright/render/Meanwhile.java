package jarwright.render;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Work that another core does meanwhile; what it throws is thrown where its outcome is taken. */
public final class Meanwhile<T> {
  private final FutureTask<T> task;

  private Meanwhile(Callable<T> work) {
    task = new FutureTask<>(work);
  }

  /** Starts it in a thread of that name, which does not keep the program from ending. */
  public static <T> Meanwhile<T> start(String name, Callable<T> work) {
    Meanwhile<T> meanwhile = new Meanwhile<>(work);
    Thread thread = new Thread(meanwhile.task, name);
    thread.setDaemon(true);
    thread.start();
    return meanwhile;
  }

  /**
   * Waits for it to end.
   *
   * @throws ExecutionException around any other checked exception of the work's own
   */
  public T outcome() throws IOException, ExecutionException {
    try {
      return task.get();
    } catch (ExecutionException e) {
      rethrow(e.getCause());
      throw e;
    } catch (InterruptedException e) {
      throw interrupted();
    }
  }

  /** Waits for it to end, but no longer than that; whether it has ended. */
  boolean endsWithin(Duration patience) throws InterruptedIOException {
    try {
      task.get(patience.toMillis(), TimeUnit.MILLISECONDS);
      return true;
    } catch (ExecutionException e) {
      return true;
    } catch (TimeoutException e) {
      return false;
    } catch (InterruptedException e) {
      throw interrupted();
    }
  }

  /** Interrupts it, if it has not ended. */
  void stop() {
    task.cancel(true);
  }

  private static InterruptedIOException interrupted() {
    Thread.currentThread().interrupt();
    return new InterruptedIOException("the work was broken off");
  }

  private static void rethrow(Throwable cause) throws IOException {
    if (cause instanceof IOException fault) {
      throw fault;
    }
    if (cause instanceof RuntimeException fault) {
      throw fault;
    }
    if (cause instanceof Error fault) {
      throw fault;
    }
  }
}
