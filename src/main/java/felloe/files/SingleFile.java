package felloe.files;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;

/** A file that stands by itself and is the maker's to edit, so that no list knows it. */
public final class SingleFile {

  private final Path file;
  private final Disk disk;

  public SingleFile(Path file, Disk disk) {
    this.file = file;
    this.disk = disk;
  }

  /**
   * Writes it where nothing is yet, whole or not at all.
   *
   * @return whether it was written; it was not when something is there
   * @throws CannotWrite when the disk says no
   */
  public boolean create(byte[] bytes) throws CannotWrite {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    boolean half = true;
    try {
      disk.create(file, bytes);
      half = false;
      return true;
    } catch (FileAlreadyExistsException inBetween) {
      half = false;
      return false;
    } catch (IOException failure) {
      throw new CannotWrite(file.toString(), OutFolder.reason(failure), "choose another place");
    } finally {
      if (half) {
        remove(file);
      }
    }
  }

  /**
   * Writes it over what is there; missing folders above it are made.
   *
   * @throws CannotWrite when the disk says no; then it is as it was
   */
  public void replace(byte[] bytes) throws CannotWrite {
    if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new CannotWrite(file.toString(), "is a folder, not a file", "move it");
    }
    OutFolder folder = OutFolder.ready(file.toAbsolutePath().getParent(), disk);
    Path passing = file.resolveSibling("." + file.getFileName() + ".felloe-new");
    boolean done = false;
    try {
      remove(passing);
      disk.create(passing, bytes);
      disk.replace(passing, file);
      done = true;
    } catch (IOException failure) {
      throw OutFolder.failure(file, failure);
    } finally {
      if (!done) {
        remove(passing);
        folder.giveUp();
      }
    }
  }

  /**
   * What is in it now; empty where nothing is.
   *
   * @throws CannotWrite when it cannot be read, and so could not be put back
   */
  public Optional<byte[]> content() throws CannotWrite {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try {
      return Optional.of(Files.readAllBytes(file));
    } catch (IOException failure) {
      throw new CannotWrite(file.toString(), OutFolder.reason(failure), "choose another place");
    }
  }

  /**
   * Makes it what it was before something else went wrong.
   *
   * @throws CannotWrite when the disk says no
   */
  public void putBack(Optional<byte[]> before) throws CannotWrite {
    if (before.isPresent()) {
      replace(before.get());
    } else {
      remove(file);
    }
  }

  private void remove(Path half) {
    try {
      if (Files.isRegularFile(half, LinkOption.NOFOLLOW_LINKS)) {
        disk.delete(half);
      }
    } catch (IOException stays) {
      // The failure that led here is the one to tell.
      return;
    }
  }
}
