package felloe.cli;

/** Exit codes. */
final class Exit {

  /** All well. */
  static final int WELL = 0;

  /** The plate fails a check. */
  static final int FAILS = 1;

  /** The input or the call is wrong. */
  static final int WRONG = 2;

  /** A file could not be written, or the program has a fault. */
  static final int TROUBLE = 3;

  private Exit() {}
}
