package felloe.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The few things that are done to a disk, each of which happens or does not. */
public interface Disk {

  Disk REAL = new Disk() {};

  /** Makes a folder that is not there yet. */
  default void createFolder(Path folder) throws IOException {
    Files.createDirectory(folder);
  }

  /** Writes a file that is not there yet, down to the platter. */
  default void create(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      for (ByteBuffer rest = ByteBuffer.wrap(bytes); rest.hasRemaining(); ) {
        channel.write(rest);
      }
      channel.force(true);
    }
  }

  /** Renames a file or folder on one disk; nothing is replaced. */
  default void rename(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
  }

  /** Renames a file over another. */
  default void replace(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  /** Deletes a file or an empty folder; a link itself, never what it points at. */
  default void delete(Path path) throws IOException {
    try {
      Files.delete(path);
    } catch (AccessDeniedException readOnly) {
      // Some systems delete no file that is marked read-only.
      if (!path.toFile().setWritable(true)) {
        throw readOnly;
      }
      Files.delete(path);
    }
  }

  /**
   * Puts the names in a folder down to the platter, so that a power cut does not undo a renaming.
   * Systems that cannot open a folder keep them safe by themselves.
   */
  default void sync(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notAsked) {
      return;
    }
  }
}
