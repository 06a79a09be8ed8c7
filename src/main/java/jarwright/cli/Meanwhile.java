package jarwright.cli;

import jarwright.problem.Refused;
import java.io.IOException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** Work that another core does meanwhile; what it throws is thrown where its outcome is taken. */
final class Meanwhile<T> {
  private final FutureTask<T> task;

  private Meanwhile(Work<T> work) {
    task = new FutureTask<>(work::outcome);
  }

  /** What is done. */
  interface Work<T> {
    T outcome() throws IOException, Refused;
  }

  static <T> Meanwhile<T> start(Work<T> work) {
    Meanwhile<T> meanwhile = new Meanwhile<>(work);
    Thread thread = new Thread(meanwhile.task, "meanwhile");
    thread.setDaemon(true);
    thread.start();
    return meanwhile;
  }

  /** Waits for the work to end. */
  T outcome() throws IOException, Refused {
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("the work was broken off", e);
    } catch (ExecutionException e) {
      Throwable cause = e.getCause();
      if (cause instanceof Refused refused) {
        throw refused;
      }
      if (cause instanceof IOException io) {
        throw io;
      }
      if (cause instanceof Error error) {
        throw error;
      }
      throw (RuntimeException) cause;
    }
  }
}
