package felloe.kit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes single files, each whole or not at all: all of them beside their places first, then each
 * is renamed over what was there.
 */
final class LooseFiles {

  private final Path out;
  private final Disk disk;

  LooseFiles(Path out, Disk disk) {
    this.out = out;
    this.disk = disk;
  }

  /**
   * Writes files into the folder.
   *
   * @return their paths, in order
   * @throws CannotWrite saying which one and why
   */
  List<Path> write(List<KitFile> files) throws CannotWrite {
    OutFolder folder = OutFolder.ready(out, disk);
    List<Path> staged = new ArrayList<>();
    List<Path> places = new ArrayList<>();
    boolean done = false;
    try {
      for (KitFile file : files) {
        Path place = OutFolder.resolve(out, file.name());
        if (Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
          throw new CannotWrite(place.toString(), "is a folder, not a file", "move it");
        }
        places.add(place);
        stage(place, file, staged);
      }
      for (int i = 0; i < places.size(); i++) {
        try {
          disk.replace(staged.get(i), places.get(i));
        } catch (IOException failure) {
          throw OutFolder.failure(places.get(i), failure);
        }
      }
      done = true;
      return places;
    } finally {
      if (!done) {
        staged.forEach(this::remove);
        folder.giveUp();
      }
    }
  }

  private void stage(Path place, KitFile file, List<Path> staged) throws CannotWrite {
    Path passing = Leftovers.staged(place);
    // Only a killed run of the same number can have left one.
    if (Files.isRegularFile(passing, LinkOption.NOFOLLOW_LINKS)) {
      remove(passing);
    }
    try {
      staged.add(passing);
      disk.create(passing, file.bytes());
    } catch (IOException failure) {
      throw OutFolder.failure(place, failure);
    }
  }

  private void remove(Path passing) {
    try {
      if (Files.isRegularFile(passing, LinkOption.NOFOLLOW_LINKS)) {
        disk.delete(passing);
      }
    } catch (IOException stays) {
      // The failure that led here is the one to tell.
      return;
    }
  }
}
