package felloe.out;

/** What NISTIR 6556 calls an error. */
public final class Rs274Exception extends RuntimeException {

  private static final long serialVersionUID = 1L;

  Rs274Exception(String message) {
    super(message);
  }
}
