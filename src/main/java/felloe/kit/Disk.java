package felloe.kit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The few things that are done to a disk, each of which happens or does not. */
interface Disk {

  /** The real one. */
  Disk REAL = new Disk() {};

  /** Makes a folder that is not there yet. */
  default void createFolder(Path folder) throws IOException {
    Files.createDirectory(folder);
  }

  /** Writes a file that is not there yet. */
  default void create(Path file, byte[] bytes) throws IOException {
    Files.write(file, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
  }

  /** Renames a file or folder within one folder or to its neighbour; nothing is replaced. */
  default void rename(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
  }

  /** Renames a file over another. */
  default void replace(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  /** Deletes a file or an empty folder; a link itself, never what it points at. */
  default void delete(Path path) throws IOException {
    Files.delete(path);
  }
}
