package felloe.kit;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;

/** Writes a file that the maker is going to edit, and never over one they have. */
final class NewFile {

  private final Disk disk;

  NewFile(Disk disk) {
    this.disk = disk;
  }

  void write(String text, Path file, boolean force) throws CannotWrite {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (file.getFileName() == null || Files.isDirectory(file)) {
      throw new BadInput(
          new Problem(Place.ofFile(file.toString()), "", "", "is a folder", "name a file in it"));
    }
    if (force) {
      Path parent = file.toAbsolutePath().getParent();
      KitFile whole = new KitFile(file.getFileName().toString(), bytes);
      new LooseFiles(parent, disk).write(List.of(whole));
      return;
    }
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw there(file);
    }
    boolean done = false;
    try {
      disk.create(file, bytes);
      done = true;
    } catch (FileAlreadyExistsException inBetween) {
      done = true;
      throw there(file);
    } catch (IOException failure) {
      throw new CannotWrite(file.toString(), OutFolder.reason(failure), "choose another place");
    } finally {
      if (!done) {
        removeHalf(file);
      }
    }
  }

  private void removeHalf(Path file) {
    try {
      if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
        disk.delete(file);
      }
    } catch (IOException stays) {
      // The failure that led here is the one to tell.
      return;
    }
  }

  private static BadInput there(Path file) {
    return new BadInput(
        new Problem(
            Place.ofFile(file.toString()),
            "",
            "",
            "is there already",
            "name another file, or replace it with --force"));
  }
}
