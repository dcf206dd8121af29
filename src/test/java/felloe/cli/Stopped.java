package felloe.cli;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** Runs what serves until it is stopped, and stops it. */
final class Stopped {

  /** By then it serves, or has said why not, ms. */
  private static final long WHILE = 1_500;

  private Stopped() {}

  static <T> T after(Callable<T> work) {
    FutureTask<T> task = new FutureTask<>(work);
    Thread thread = new Thread(task, "stopped");
    thread.start();
    try {
      Thread.sleep(WHILE);
      thread.interrupt();
      return task.get();
    } catch (InterruptedException | ExecutionException failed) {
      throw new IllegalStateException(failed);
    }
  }
}
