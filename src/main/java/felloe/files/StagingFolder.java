package felloe.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A hidden folder within the one that is written to: new files wait in it, old ones lie in it until
 * the new ones are in place, and the journal tells which. Without a journal what is in it is
 * litter.
 */
final class StagingFolder {

  private static final String START = ".felloe-";
  private static final String NEW = "new";
  private static final String OLD = "old";
  private static final String JOURNAL = "journal";
  private static final String PART = "journal.part";

  private final Path home;
  private final Path self;
  private final Disk disk;

  private StagingFolder(Path home, Path self, Disk disk) {
    this.home = home;
    this.self = self;
    this.disk = disk;
  }

  /** One that is not there yet, under the first number that is free. */
  static StagingFolder fresh(Path home, Disk disk) {
    for (int number = 0; ; number++) {
      Path self = home.resolve(START + number);
      if (!Files.exists(self, LinkOption.NOFOLLOW_LINKS)) {
        return new StagingFolder(home, self, disk);
      }
    }
  }

  /** Those that earlier runs left, in order. */
  static List<StagingFolder> left(Path home, Disk disk) throws IOException {
    List<StagingFolder> found = new ArrayList<>();
    for (Path entry : list(home)) {
      String name = entry.getFileName().toString();
      if (name.matches("\\.felloe-[0-9]{1,9}")
          && Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)) {
        found.add(new StagingFolder(home, entry, disk));
      }
    }
    return found;
  }

  static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.sorted().toList();
    }
  }

  /** Puts new files in it, and the journal under a name that does not count yet. */
  void stage(List<OutFile> files, Journal journal) throws CannotWrite {
    Path now = self;
    try {
      disk.createFolder(self);
      disk.createFolder(self.resolve(NEW));
      disk.createFolder(self.resolve(OLD));
      for (OutFile file : files) {
        now = home.resolve(file.name());
        disk.create(self.resolve(NEW).resolve(file.name()), file.bytes());
      }
      now = self;
      disk.create(self.resolve(PART), journal.bytes());
      disk.sync(self.resolve(NEW));
    } catch (IOException failure) {
      throw OutFolder.failure(now, failure);
    }
  }

  /** From here on the changes hold. */
  void promise() throws IOException {
    disk.rename(self.resolve(PART), self.resolve(JOURNAL));
    disk.sync(self);
  }

  /** Takes the promise back; everything must be as it was. */
  void takeBack() throws IOException {
    Path journal = self.resolve(JOURNAL);
    if (Files.exists(journal, LinkOption.NOFOLLOW_LINKS)) {
      disk.sync(home);
      disk.delete(journal);
    }
  }

  /**
   * Carries a step out, or what is left of it.
   *
   * @throws CannotWrite when something stands in its place that was not there when it was planned
   */
  void carryOut(Step step) throws IOException, CannotWrite {
    Path place = home.resolve(step.name());
    Path coming = self.resolve(NEW).resolve(step.name());
    boolean comes = Files.exists(coming, LinkOption.NOFOLLOW_LINKS);
    if (step.after().isPresent() && !comes) {
      return;
    }
    if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
      Optional<String> there = digest(place);
      if (there.isPresent() && there.equals(step.before())) {
        disk.rename(place, self.resolve(OLD).resolve(step.name()));
      } else if (comes) {
        throw new CannotWrite(
            place.toString(),
            "came in between, where a file of Felloe is waiting to go",
            "move it, then run again");
      }
    }
    if (comes) {
      disk.rename(coming, place);
    }
  }

  /** Undoes a step, or what was done of it. */
  void undo(Step step) throws IOException {
    Path place = home.resolve(step.name());
    Path coming = self.resolve(NEW).resolve(step.name());
    Path old = self.resolve(OLD).resolve(step.name());
    if (step.after().isPresent() && !Files.exists(coming, LinkOption.NOFOLLOW_LINKS)) {
      disk.rename(place, coming);
    }
    if (Files.exists(old, LinkOption.NOFOLLOW_LINKS)) {
      disk.rename(old, place);
    }
  }

  /** Ends it: the changes stand, and what is left in it is litter. */
  void settle() throws IOException {
    disk.sync(home);
    disk.delete(self.resolve(JOURNAL));
  }

  /** The journal that an earlier run left. */
  Optional<Journal> promised() throws IOException {
    Path journal = self.resolve(JOURNAL);
    return Files.exists(journal, LinkOption.NOFOLLOW_LINKS)
        ? Optional.of(Journal.read(journal))
        : Optional.empty();
  }

  /** Deletes what is left in it; what is not understood stays. */
  void discard() throws IOException {
    if (!Files.exists(self, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    for (Path room : List.of(self.resolve(NEW), self.resolve(OLD))) {
      if (Files.isDirectory(room, LinkOption.NOFOLLOW_LINKS)) {
        for (Path file : list(room)) {
          if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            disk.delete(file);
          }
        }
        disk.delete(room);
      }
    }
    if (Files.exists(self.resolve(PART), LinkOption.NOFOLLOW_LINKS)) {
      disk.delete(self.resolve(PART));
    }
    disk.delete(self);
  }

  /** What a regular file holds; empty for anything else. */
  static Optional<String> digest(Path file) throws IOException {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        ? Optional.of(OutFile.sha256(Files.readAllBytes(file)))
        : Optional.empty();
  }

  @Override
  public String toString() {
    return self.toString();
  }
}
