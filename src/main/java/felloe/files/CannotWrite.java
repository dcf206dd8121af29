package felloe.files;

import felloe.plate.Place;

/**
 * A file could not be written. Whatever was there before is as it was, unless the message says
 * otherwise. It is neither the maker's input nor a fault of the program, so it has no stack trace.
 */
public final class CannotWrite extends Exception {

  private static final long serialVersionUID = 1L;

  private final boolean elsewhere;

  /** A path and why, as the rest of a sentence about it: {@code is a file, not a folder}. */
  public CannotWrite(String path, String why, String cure) {
    this(path, why, cure, false);
  }

  private CannotWrite(String path, String why, String cure, boolean elsewhere) {
    super(line(path, why, cure), null, false, false);
    this.elsewhere = elsewhere;
  }

  /**
   * The same where another folder would do.
   *
   * @param cure what else would help; may be empty
   */
  static CannotWrite here(String path, String why, String cure) {
    String other = "choose another folder";
    return new CannotWrite(path, why, cure.isEmpty() ? other : cure + ", or " + other, true);
  }

  /** Whether its message ends with the advice to choose another folder. */
  public boolean elsewhere() {
    return elsewhere;
  }

  private static String line(String path, String why, String cure) {
    String shown = path.isEmpty() ? "" : Place.ofFile(path) + ": ";
    return shown + why + (cure.isEmpty() ? "" : "; " + cure);
  }
}
