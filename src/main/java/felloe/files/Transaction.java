package felloe.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Writes sets of files, all of them or none.
 *
 * <p>In each folder the new files wait in a hidden folder of their own, then a journal is written
 * that names every change, and only then old files go aside and new ones take their places. When a
 * step fails, those before it are undone. When the program is killed before the journal is there,
 * the old files stand; after that the next run into the folder carries out what the journal
 * promises. So no mixture stays, and nothing hidden.
 *
 * <p>Each folder has a list of the files that the program wrote there, {@code felloe-files.txt}.
 * What is not on it, or is no longer as it was written, is the maker's: it is neither replaced nor
 * deleted, and the run is refused where it stands in the way. A set that is written again replaces
 * its own files and leaves those of other sets.
 */
public final class Transaction {

  /** How long another run is waited for, milliseconds. */
  private static final long PATIENCE = 10_000;

  private final Path out;
  private final Disk disk;
  private final List<Target> targets;

  /**
   * Sets that go to one folder.
   *
   * @param folder its name within the one that is written to; empty for that itself
   */
  private record Target(String folder, FileSet set) {}

  private Transaction(Path out, Disk disk, List<Target> targets) {
    this.out = out;
    this.disk = disk;
    this.targets = targets;
  }

  /**
   * A transaction that writes nothing yet.
   *
   * @param out the folder to write to; made when it is missing
   */
  public static Transaction into(Path out, Disk disk) {
    return new Transaction(out, disk, List.of());
  }

  /**
   * With a set in a folder of its own shape, made when it is missing. Sets of other shapes are
   * refused there.
   *
   * @param name the folder's name within the one that is written to
   */
  public Transaction folder(String name, FileSet set) {
    if (name.isEmpty()) {
      throw new IllegalArgumentException("a folder without a name");
    }
    return with(new Target(name, set));
  }

  /** With a set in the very folder that is written to, beside those of other shapes. */
  public Transaction here(FileSet set) {
    return with(new Target("", set));
  }

  private Transaction with(Target target) {
    List<Target> more = new ArrayList<>(targets);
    more.add(target);
    return new Transaction(out, disk, List.copyOf(more));
  }

  /**
   * Writes all of it; where there is nothing to write, no folder is made either.
   *
   * @return what was written, in the order in which it was given
   * @throws CannotWrite saying which path and why; everything is then as it was, unless it says
   *     otherwise
   */
  public Written commit() throws CannotWrite {
    if (targets.isEmpty()) {
      return Written.NONE;
    }
    Map<String, List<FileSet>> folders = new LinkedHashMap<>();
    for (Target target : targets) {
      folders.computeIfAbsent(target.folder(), f -> new ArrayList<>()).add(target.set());
    }
    Map<String, OutFolder> made = new LinkedHashMap<>();
    // Always in the same order, so that two runs never wait for each other.
    Map<String, FolderLock> locks = new TreeMap<>();
    boolean done = false;
    try {
      made.put("", OutFolder.ready(out, disk));
      for (String name : new TreeMap<>(folders).keySet()) {
        Path folder = place(name);
        if (!name.isEmpty()) {
          refuseWhatIsNoFolder(folder);
          made.put(name, OutFolder.ready(folder, disk));
        }
        locks.put(name, FolderLock.of(folder, PATIENCE));
        recover(folder);
      }
      Map<FolderChange, StagingFolder> staged = new LinkedHashMap<>();
      List<FolderChange> changes = new ArrayList<>();
      for (Map.Entry<String, List<FileSet>> one : folders.entrySet()) {
        String name = one.getKey();
        changes.add(FolderChange.of(place(name), !name.isEmpty(), one.getValue()));
      }
      for (FolderChange change : changes) {
        if (!change.isNothing()) {
          staged.put(change, StagingFolder.fresh(change.folder(), disk));
        }
      }
      write(staged);
      done = true;
      return new Written(
          changes.stream().flatMap(change -> change.written().stream()).toList(),
          changes.stream().flatMap(change -> change.kept().stream()).toList(),
          changes.stream().flatMap(change -> change.older().stream()).toList());
    } finally {
      locks.values().forEach(FolderLock::close);
      if (!done) {
        List<OutFolder> last = new ArrayList<>(made.values());
        for (int i = last.size() - 1; i >= 0; i--) {
          last.get(i).giveUp();
        }
      }
    }
  }

  private Path place(String name) throws CannotWrite {
    return name.isEmpty() ? out : OutFolder.resolve(out, name);
  }

  private static void refuseWhatIsNoFolder(Path folder) throws CannotWrite {
    if (Files.isSymbolicLink(folder)) {
      throw CannotWrite.here(
          folder.toString(),
          "is a link, which a kit neither follows nor replaces",
          "remove the link");
    }
    if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(folder)) {
      throw CannotWrite.here(
          folder.toString(), "is a file where the kit's folder belongs", "move it");
    }
  }

  private void write(Map<FolderChange, StagingFolder> staged) throws CannotWrite {
    boolean done = false;
    try {
      for (Map.Entry<FolderChange, StagingFolder> one : staged.entrySet()) {
        one.getValue().stage(one.getKey().files(), one.getKey().journal());
      }
      carryOut(staged);
      done = true;
    } finally {
      if (!done) {
        staged.values().forEach(Transaction::discard);
      }
    }
    for (StagingFolder folder : staged.values()) {
      try {
        folder.settle();
        folder.discard();
      } catch (IOException stays) {
        // The new files are in their places; the next run clears this away.
        continue;
      }
    }
  }

  private static void carryOut(Map<FolderChange, StagingFolder> staged) throws CannotWrite {
    Path now = null;
    try {
      for (Map.Entry<FolderChange, StagingFolder> one : staged.entrySet()) {
        now = one.getKey().folder();
        one.getValue().promise();
      }
      for (Map.Entry<FolderChange, StagingFolder> one : staged.entrySet()) {
        for (Step step : one.getKey().journal().steps()) {
          now = one.getKey().folder().resolve(step.name());
          one.getValue().carryOut(step);
        }
      }
    } catch (IOException failure) {
      undo(staged);
      throw OutFolder.failure(now, failure);
    } catch (CannotWrite inTheWay) {
      undo(staged);
      throw inTheWay;
    }
  }

  private static void undo(Map<FolderChange, StagingFolder> staged) throws CannotWrite {
    for (Map.Entry<FolderChange, StagingFolder> one : staged.entrySet()) {
      List<Step> steps = one.getKey().journal().steps();
      try {
        for (int i = steps.size() - 1; i >= 0; i--) {
          one.getValue().undo(steps.get(i));
        }
        one.getValue().takeBack();
      } catch (IOException worse) {
        throw new CannotWrite(
            one.getKey().folder().toString(),
            OutFolder.reason(worse) + ", and what was begun could not be undone",
            "what is missing lies in " + one.getValue() + "; the next run puts it in order");
      }
    }
  }

  private static void discard(StagingFolder folder) {
    try {
      if (folder.promised().isEmpty()) {
        folder.discard();
      }
    } catch (IOException stays) {
      // The failure that led here is the one to tell; the next run clears this away.
      return;
    }
  }

  /** Puts in order what killed runs left: what a journal promises is carried out, the rest goes. */
  private void recover(Path folder) throws CannotWrite {
    try {
      for (StagingFolder left : StagingFolder.left(folder, disk)) {
        Optional<Journal> journal = left.promised();
        if (journal.isPresent()) {
          for (Step step : journal.get().steps()) {
            left.carryOut(step);
          }
          left.settle();
        }
        discard(left);
      }
    } catch (IOException failure) {
      throw OutFolder.failure(folder, failure);
    }
  }
}
