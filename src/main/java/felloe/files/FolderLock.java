package felloe.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

/**
 * One writer at a time in a folder. The system lets go of a lock when its process ends, however it
 * ends, so whoever holds it knows that what other runs left is litter. Where a disk knows no locks
 * two runs at once are not told apart.
 */
final class FolderLock implements AutoCloseable {

  static final String NAME = ".felloe-lock";

  private static final long STEP_MS = 20;

  /** Locked far behind what is written, since some systems refuse to read what is locked. */
  private static final long BEHIND = Long.MAX_VALUE - 1;

  private final Path file;
  private final FileChannel channel;

  private FolderLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Waits for the folder.
   *
   * @param patience for how long, milliseconds
   * @throws CannotWrite when another run does not end, or nothing may be written there
   */
  static FolderLock of(Path folder, long patience) throws CannotWrite {
    Path file = folder.resolve(NAME);
    long end = System.nanoTime() + patience * 1_000_000;
    while (true) {
      try {
        FolderLock lock = attempt(file);
        if (lock != null) {
          return lock;
        }
      } catch (IOException failure) {
        throw OutFolder.failure(folder, failure);
      }
      if (System.nanoTime() > end) {
        throw new CannotWrite(
            folder.toString(), "another run of felloe writes there", "wait for it, then run again");
      }
      try {
        Thread.sleep(STEP_MS);
      } catch (InterruptedException stop) {
        Thread.currentThread().interrupt();
        throw new CannotWrite(folder.toString(), "was not written: stopped", "");
      }
    }
  }

  private static FolderLock attempt(Path file) throws IOException {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)
        && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new IOException("something else is called " + file.getFileName());
    }
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    boolean held = false;
    try {
      held = holds(channel) && isStillThere(file, channel);
      return held ? new FolderLock(file, channel) : null;
    } finally {
      if (!held) {
        channel.close();
      }
    }
  }

  private static boolean holds(FileChannel channel) {
    try {
      FileLock lock = channel.tryLock(BEHIND, 1, false);
      return lock != null;
    } catch (OverlappingFileLockException another) {
      return false;
    } catch (IOException knowsNoLocks) {
      return true;
    }
  }

  /** Whether the name still means the file that is locked: the one before may have deleted it. */
  private static boolean isStillThere(Path file, FileChannel channel) throws IOException {
    String mark = ProcessHandle.current().pid() + "-" + System.nanoTime();
    byte[] bytes = mark.getBytes(StandardCharsets.US_ASCII);
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(bytes), 0);
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && Arrays.equals(bytes, Files.readAllBytes(file));
  }

  @Override
  public void close() {
    try (channel) {
      Files.deleteIfExists(file);
    } catch (IOException stays) {
      // An unlocked file is in nobody's way; the next run deletes it.
      return;
    }
  }
}
