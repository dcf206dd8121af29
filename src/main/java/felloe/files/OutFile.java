package felloe.files;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A file that is ready to be written.
 *
 * @param name its name, without folders
 * @param bytes all of it; not to be changed
 * @param form whether it is a form to type into: once something is typed it is left as it is
 */
public record OutFile(String name, byte[] bytes, boolean form) {

  /**
   * Checks what can be checked at once: that the file is not empty and begins as its kind must.
   *
   * @throws IllegalStateException when it does not: then a writer is broken
   */
  public OutFile {
    if (name.isEmpty() || name.chars().anyMatch(c -> c < ' ' || c == '/' || c == '\\')) {
      throw new IllegalArgumentException("not a file's name: " + name);
    }
    if (bytes.length == 0 || !startsRight(name, bytes)) {
      throw new IllegalStateException(name + " was made wrong: " + bytes.length + " bytes");
    }
  }

  /** A file that is not a form. */
  public OutFile(String name, byte[] bytes) {
    this(name, bytes, false);
  }

  private static boolean startsRight(String name, byte[] bytes) {
    String start =
        switch (name.substring(name.lastIndexOf('.') + 1)) {
          case "pdf" -> "%PDF-";
          case "png" -> "\u0089PNG";
          case "svg" -> "<?xml";
          case "json" -> "{";
          default -> "";
        };
    if (bytes.length < start.length()) {
      return false;
    }
    for (int i = 0; i < start.length(); i++) {
      if ((bytes[i] & 0xFF) != start.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  /** The SHA-256 digest of its bytes, 64 hexadecimal digits. */
  public String sha256() {
    return sha256(bytes);
  }

  static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
