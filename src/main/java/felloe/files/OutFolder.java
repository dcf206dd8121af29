package felloe.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The folder that files are written to: made when it is missing, and unmade when nothing came. */
final class OutFolder {

  private final Disk disk;
  private final List<Path> made;

  private OutFolder(Disk disk, List<Path> made) {
    this.disk = disk;
    this.made = made;
  }

  /**
   * Makes the folder and those above it that are missing.
   *
   * @throws CannotWrite when something is in the way
   */
  static OutFolder ready(Path out, Disk disk) throws CannotWrite {
    List<Path> missing = new ArrayList<>();
    for (Path p = out.toAbsolutePath().normalize(); p != null && !Files.isDirectory(p); ) {
      missing.add(0, p);
      p = p.getParent();
    }
    OutFolder folder = new OutFolder(disk, new ArrayList<>());
    for (Path p : missing) {
      try {
        disk.createFolder(p);
        folder.made.add(p);
      } catch (FileAlreadyExistsException inTheWay) {
        if (Files.isDirectory(p)) {
          continue;
        }
        folder.giveUp();
        throw CannotWrite.here(
            out.toString(),
            p.endsWith(out) ? "is a file, not a folder" : p + " is a file, not a folder",
            "");
      } catch (IOException failure) {
        folder.giveUp();
        throw failure(out, failure);
      }
    }
    return folder;
  }

  /** Takes away the folders that were made here, as long as they are empty. */
  void giveUp() {
    for (int i = made.size() - 1; i >= 0; i--) {
      try {
        disk.delete(made.get(i));
      } catch (IOException stays) {
        return;
      }
    }
  }

  /**
   * A name in the folder.
   *
   * @throws CannotWrite when the machine's file names cannot hold it
   */
  static Path resolve(Path out, String name) throws CannotWrite {
    try {
      return out.resolve(name);
    } catch (InvalidPathException odd) {
      throw new CannotWrite(
          name, "cannot be the name of a file on this machine", "rename the shape file");
    }
  }

  /** A failure in words. */
  static CannotWrite failure(Path path, IOException failure) {
    return CannotWrite.here(path.toString(), reason(failure), "mend that");
  }

  /** Why, as the rest of a sentence about the path. */
  static String reason(IOException failure) {
    if (failure instanceof AccessDeniedException) {
      return "cannot be written: you may not write there";
    }
    if (failure instanceof FileAlreadyExistsException) {
      return "cannot be written: something of that name came in between";
    }
    String why = failure instanceof FileSystemException f ? f.getReason() : failure.getMessage();
    return "cannot be written" + (why == null ? "" : ": " + why);
  }
}
