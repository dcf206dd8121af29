package felloe.board;

/** Lets pages wait until there is something new. */
final class News implements AutoCloseable {

  private long count;
  private boolean closed;

  /** Says that there is something new. */
  synchronized void tell() {
    count++;
    notifyAll();
  }

  /**
   * Waits until there is more than was seen, or for some time.
   *
   * @return how much there is now
   */
  synchronized long after(long seen, long millis) throws InterruptedException {
    if (count == seen && !closed) {
      wait(millis);
    }
    return count;
  }

  synchronized boolean isClosed() {
    return closed;
  }

  @Override
  public synchronized void close() {
    closed = true;
    notifyAll();
  }
}
