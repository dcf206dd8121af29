package felloe.kit;

import felloe.files.CannotWrite;
import felloe.files.Disk;
import felloe.files.SingleFile;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

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
      new SingleFile(file, disk).replace(bytes);
      return;
    }
    if (!new SingleFile(file, disk).create(bytes)) {
      throw there(file);
    }
  }

  private static BadInput there(Path file) {
    return new BadInput(
        new Problem(
            Place.ofFile(file.toString()),
            "",
            "",
            "is there already",
            "name another file, or move it away; 'felloe new' replaces it with --force"));
  }
}
