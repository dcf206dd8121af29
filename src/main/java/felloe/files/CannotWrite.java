package felloe.files;

import felloe.plate.Place;

/**
 * A file could not be written. Whatever was there before is as it was, unless the message says
 * otherwise. It is neither the maker's input nor a fault of the program, so it has no stack trace.
 */
public final class CannotWrite extends Exception {

  private static final long serialVersionUID = 1L;

  /** A path and why, as the rest of a sentence about it: {@code is a file, not a folder}. */
  public CannotWrite(String path, String why, String cure) {
    super(line(path, why, cure), null, false, false);
  }

  private static String line(String path, String why, String cure) {
    String shown = path.isEmpty() ? "" : Place.ofFile(path) + ": ";
    return shown + why + (cure.isEmpty() ? "" : "; " + cure);
  }
}
