package felloe.kit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The passing names under which a kit is put together and the old one is kept meanwhile, and what a
 * run that was killed left behind under them. A passing name holds the number of the process, so
 * that two runs never take each other's for a leftover.
 */
final class Leftovers {

  private static final String NEW = ".felloe-new-";
  private static final String OLD = ".felloe-old-";

  private final Disk disk;

  Leftovers(Disk disk) {
    this.disk = disk;
  }

  /** Where the new one is put together: beside its place. */
  static Path staged(Path place) {
    return beside(place, NEW);
  }

  /** Where the old one is kept until the new one is in its place. */
  static Path aside(Path place) {
    return beside(place, OLD);
  }

  private static Path beside(Path place, String kind) {
    return place.resolveSibling("." + place.getFileName() + kind + ProcessHandle.current().pid());
  }

  /**
   * Puts in order what a killed run left: an old kit goes back to its place, foreign files go into
   * the kit that is there, files that a kit owns are deleted. What is not understood stays.
   */
  void settle(Path kit, KitNames names) throws IOException {
    if (!Files.isDirectory(kit.toAbsolutePath().getParent())) {
      return;
    }
    for (Path old : left(kit, OLD)) {
      if (!Files.exists(kit, LinkOption.NOFOLLOW_LINKS)) {
        disk.rename(old, kit);
        continue;
      }
      for (Path entry : list(old)) {
        Path home = kit.resolve(entry.getFileName());
        if (!names.owns(entry.getFileName().toString())
            && !Files.exists(home, LinkOption.NOFOLLOW_LINKS)) {
          disk.rename(entry, home);
        }
      }
      discard(old, names);
    }
    for (Path half : left(kit, NEW)) {
      discard(half, names);
    }
  }

  /** Deletes a folder's files that a kit owns, then the folder when nothing else is in it. */
  void discard(Path folder, KitNames names) throws IOException {
    for (Path entry : list(folder)) {
      if (names.owns(entry.getFileName().toString())
          && Files.isRegularFile(entry, LinkOption.NOFOLLOW_LINKS)) {
        disk.delete(entry);
      }
    }
    if (list(folder).isEmpty()) {
      disk.delete(folder);
    }
  }

  private static List<Path> left(Path kit, String kind) throws IOException {
    String start = "." + kit.getFileName() + kind;
    List<Path> found = new ArrayList<>();
    for (Path entry : list(kit.toAbsolutePath().getParent())) {
      String name = entry.getFileName().toString();
      if (name.startsWith(start)
          && isDead(name.substring(start.length()))
          && Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)) {
        found.add(entry);
      }
    }
    return found;
  }

  /** Whether no process works under a number; one's own is dead until it begins. */
  private static boolean isDead(String number) {
    if (number.isEmpty() || number.length() > 18 || !number.chars().allMatch(c -> isDigit(c))) {
      return false;
    }
    long pid = Long.parseLong(number);
    Optional<ProcessHandle> process = ProcessHandle.of(pid);
    return pid == ProcessHandle.current().pid() || process.isEmpty() || !process.get().isAlive();
  }

  private static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }

  /** What lies in a folder, by name. */
  static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.sorted().toList();
    }
  }
}
