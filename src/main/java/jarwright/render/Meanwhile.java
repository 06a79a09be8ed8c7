package jarwright.render;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Work that another core does meanwhile; what it throws is thrown where its outcome is taken.
 *
 * @param <T> what comes of it
 * @param <X> what it may throw, besides {@link IOException}
 */
public final class Meanwhile<T, X extends Exception> {
  private final FutureTask<T> task;

  private Meanwhile(Work<T, X> work) {
    task = new FutureTask<>(work::outcome);
  }

  /** What is done. */
  public interface Work<T, X extends Exception> {
    T outcome() throws X, IOException;
  }

  /** Starts it in a thread of that name, which does not keep the program from ending. */
  public static <T, X extends Exception> Meanwhile<T, X> start(String name, Work<T, X> work) {
    Meanwhile<T, X> meanwhile = new Meanwhile<>(work);
    Thread thread = new Thread(meanwhile.task, name);
    thread.setDaemon(true);
    thread.start();
    return meanwhile;
  }

  /** Waits for it to end. */
  public T outcome() throws X, IOException {
    try {
      return task.get();
    } catch (ExecutionException e) {
      throw thrown(e.getCause());
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

  @SuppressWarnings("unchecked") // work throws nothing else
  private X thrown(Throwable cause) throws IOException {
    if (cause instanceof IOException fault) {
      throw fault;
    }
    if (cause instanceof RuntimeException fault) {
      throw fault;
    }
    if (cause instanceof Error fault) {
      throw fault;
    }
    return (X) cause;
  }
}
