package felloe.board;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** Tells a hub file from a shape file by its first key. */
final class HubFiles {

  private static final Pattern KEY = Pattern.compile("(?m)^felloe[-_]hub\\s*:");

  /** Comments may stand before it. */
  private static final int HEAD = 4096;

  private HubFiles() {}

  static boolean is(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      String head = new String(in.readNBytes(HEAD), StandardCharsets.UTF_8);
      return KEY.matcher(head).find();
    } catch (IOException unreadable) {
      return false;
    }
  }
}
