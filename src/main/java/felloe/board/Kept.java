package felloe.board;

import felloe.files.CannotWrite;
import felloe.kit.Kit;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;

/**
 * What was changed and not saved yet, kept beside the shape file for a page or program that dies.
 * It is written behind the page, since a disk takes longer than a drawing; of texts that follow
 * each other fast the last is kept.
 */
final class Kept implements AutoCloseable {

  private static final int LARGEST = 8 << 20;

  /** Seconds in which what is on its way is written at the end. */
  private static final long PATIENCE = 10;

  private final Path file;
  private final Kit kit;
  private final AtomicReference<String> next = new AtomicReference<>();
  private final ExecutorService hands = Hands.one("kept", Thread.NORM_PRIORITY);

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

  /** Keeps a text, soon. */
  void keep(String text) {
    if (next.getAndSet(text) == null) {
      hands.execute(this::write);
    }
  }

  private void write() {
    String text = next.getAndSet(null);
    if (text == null) {
      return;
    }
    try {
      kit.replace(file, text);
    } catch (CannotWrite refused) {
      // A disk that says no is told when the shape is saved.
      return;
    }
  }

  /** Keeps nothing any more; when it returns, nothing is there. */
  void drop() {
    next.set(null);
    try {
      hands.submit(this::delete).get();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException failed) {
      throw new IllegalStateException(failed.getCause());
    }
  }

  private void delete() {
    try {
      if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
        Files.delete(file);
      }
    } catch (IOException stays) {
      // What stays is the text that was saved: it is not offered again.
      return;
    }
  }

  /** Writes what is on its way. */
  @Override
  public void close() {
    hands.shutdown();
    try {
      hands.awaitTermination(PATIENCE, TimeUnit.SECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
