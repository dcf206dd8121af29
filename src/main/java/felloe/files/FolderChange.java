package felloe.files;

import felloe.files.Manifest.Entry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What sets of files change in one folder: planned first, so that all that is in the way is told.
 */
final class FolderChange {

  private static final int TOLD = 3;

  private final Path folder;
  private final Manifest before;
  private final Map<String, Entry> after;
  private final Map<String, OutFile> coming = new LinkedHashMap<>();
  private final List<Step> steps = new ArrayList<>();
  private final List<Path> written = new ArrayList<>();
  private final List<Path> kept = new ArrayList<>();
  private final List<Path> older = new ArrayList<>();
  private final List<String> foreign = new ArrayList<>();
  private final List<String> changed = new ArrayList<>();

  private FolderChange(Path folder, Manifest before) {
    this.folder = folder;
    this.before = before;
    this.after = before.entries();
  }

  /**
   * Plans.
   *
   * @param own whether the folder belongs to one shape
   * @throws CannotWrite naming what is in the way
   */
  static FolderChange of(Path folder, boolean own, List<FileSet> sets) throws CannotWrite {
    FolderChange change = new FolderChange(folder, Manifest.read(folder));
    try {
      for (FileSet set : sets) {
        change.refuseOtherShapes(own, set);
        for (OutFile file : set.files()) {
          change.add(set, file);
        }
      }
      change.refuseWhatIsNotOurs(own);
      for (FileSet set : sets) {
        change.dropStale(set);
      }
      for (FileSet set : sets) {
        change.noteOlder(set);
      }
      OutFile list = new Manifest(change.after).file();
      change.put(list, StagingFolder.digest(folder.resolve(Manifest.NAME)));
    } catch (IOException failure) {
      throw OutFolder.failure(folder, failure);
    }
    return change;
  }

  private void refuseOtherShapes(boolean own, FileSet set) throws CannotWrite {
    for (Map.Entry<String, Entry> one : before.entries().entrySet()) {
      String other = one.getValue().source();
      boolean meets = own || set.files().stream().anyMatch(f -> f.name().equals(one.getKey()));
      if (meets && !other.isEmpty() && !set.source().isEmpty() && !other.equals(set.source())) {
        throw CannotWrite.here(
            (own ? folder : folder.resolve(one.getKey())).toString(),
            "was made from '" + other + "', and would now be overwritten by '" + set.source() + "'",
            "rename one of the two shape files");
      }
    }
  }

  private void add(FileSet set, OutFile file) throws IOException, CannotWrite {
    Path place = OutFolder.resolve(folder, file.name());
    if (coming.containsKey(file.name()) || file.name().equals(Manifest.NAME)) {
      throw new CannotWrite(
          place.toString(), "would be written twice in one run", "give the shapes other names");
    }
    coming.put(file.name(), file);
    Optional<String> there = Optional.empty();
    if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
      there = StagingFolder.digest(place);
      if (there.isEmpty()) {
        throw CannotWrite.here(
            place.toString(),
            Files.isSymbolicLink(place)
                ? "is a link, which is neither followed nor replaced"
                : "is a folder, not a file",
            "move it");
      }
    }
    Optional<Entry> entry = before.entry(file.name());
    boolean same = there.equals(Optional.of(file.sha256()));
    boolean ours = there.isEmpty() || same || there.equals(entry.map(Entry::digest));
    if (!ours && file.form()) {
      kept.add(place);
      return;
    }
    if (!ours) {
      (entry.isPresent() ? changed : foreign).add(place.toString());
      return;
    }
    after.put(file.name(), new Entry(file.sha256(), set.set(), set.source(), set.revision()));
    written.add(place);
    put(file, there);
  }

  private void put(OutFile file, Optional<String> there) {
    String digest = file.sha256();
    coming.put(file.name(), file);
    if (!there.equals(Optional.of(digest))) {
      steps.add(Step.put(file.name(), there, digest));
    }
  }

  private void refuseWhatIsNotOurs(boolean own) throws CannotWrite {
    if (own && !foreign.isEmpty() && before.isEmpty()) {
      throw CannotWrite.here(
          folder.toString(),
          "has no list of what Felloe wrote there ("
              + Manifest.NAME
              + "), so these files may be your own: "
              + some(foreign.stream().map(f -> Path.of(f).getFileName().toString()).toList()),
          "move the folder away and run again (what you do not need of the old one can be deleted"
              + " then)");
    }
    if (!foreign.isEmpty()) {
      throw CannotWrite.here(
          "",
          some(foreign) + ": there already, and not known as made by Felloe",
          "move or delete what is there");
    }
    if (!changed.isEmpty()) {
      throw new CannotWrite(
          "",
          some(changed) + ": changed since Felloe wrote it, so it is yours now",
          "rename it to keep it, or delete it, then run again");
    }
  }

  private static String some(List<String> paths) {
    int more = paths.size() - TOLD;
    return String.join(", ", paths.subList(0, Math.min(TOLD, paths.size())))
        + (more > 0 ? " and " + more + " more" : "");
  }

  /** Files of the same set that are not made any more. A changed one is the maker's and stays. */
  private void dropStale(FileSet set) throws IOException {
    for (Map.Entry<String, Entry> one : before.entries().entrySet()) {
      String name = one.getKey();
      if (one.getValue().of(set) && !coming.containsKey(name)) {
        after.remove(name);
        Optional<String> there = StagingFolder.digest(folder.resolve(name));
        if (there.equals(Optional.of(one.getValue().digest()))) {
          steps.add(Step.drop(name, one.getValue().digest()));
        }
      }
    }
  }

  /** Files of other sets that were made of the shape before it was changed. */
  private void noteOlder(FileSet set) {
    after.forEach(
        (name, entry) -> {
          Path place = folder.resolve(name);
          if (entry.isOlderThan(set) && !older.contains(place) && Files.exists(place)) {
            older.add(place);
          }
        });
  }

  Path folder() {
    return folder;
  }

  boolean isNothing() {
    return steps.isEmpty();
  }

  Journal journal() {
    return new Journal(steps);
  }

  /** The files that are new or other than those that are there. */
  List<OutFile> files() {
    return steps.stream()
        .filter(step -> step.after().isPresent())
        .map(step -> coming.get(step.name()))
        .toList();
  }

  List<Path> written() {
    return written;
  }

  List<Path> kept() {
    return kept;
  }

  List<Path> older() {
    return older;
  }
}
