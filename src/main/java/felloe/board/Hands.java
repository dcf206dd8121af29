package felloe.board;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadFactory;

/** Threads that work behind the page, and end with the program. */
final class Hands {

  private Hands() {}

  /** One after the other. */
  static ExecutorService one(String name, int priority) {
    return Executors.newSingleThreadExecutor(named(name, priority));
  }

  static ThreadFactory named(String name, int priority) {
    return work -> {
      Thread thread = new Thread(work, name);
      thread.setDaemon(true);
      thread.setPriority(priority);
      return thread;
    };
  }
}
