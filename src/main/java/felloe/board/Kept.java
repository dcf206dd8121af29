package felloe.board;

import felloe.files.CannotWrite;
import felloe.kit.Kit;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What was changed and not saved yet, kept beside the shape file for a page or program that dies.
 */
final class Kept {

  private static final int LARGEST = 8 << 20;

  private final Path file;
  private final Kit kit;

  /**
   * @param shape the shape file
   */
  Kept(Path shape, Kit kit) {
    this.file = shape.resolveSibling("." + shape.getFileName() + ".felloe-unsaved");
    this.kit = kit;
  }

  /** What was kept; empty where nothing was, or where it cannot be read. */
  Optional<String> text() {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      return Optional.of(new String(in.readNBytes(LARGEST), StandardCharsets.UTF_8));
    } catch (IOException cannot) {
      return Optional.empty();
    }
  }

  /** Keeps a text. */
  void keep(String text) throws CannotWrite {
    kit.replace(file, text);
  }

  /** Keeps nothing any more. */
  void drop() {
    try {
      if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
        Files.delete(file);
      }
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }
}
