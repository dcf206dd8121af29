package felloe.load;

/** A problem that has no answer: nothing holds the plate, or a force is not on it. */
public final class LoadException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String subject;

  /**
   * Tells what is wrong.
   *
   * @param subject of what: {@code support}, or the name of a load case
   * @param message what, and how to cure it
   */
  public LoadException(String subject, String message) {
    super(message);
    this.subject = subject;
  }

  /** Of what. */
  public String subject() {
    return subject;
  }
}
