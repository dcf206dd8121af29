package felloe.kit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts whole kits in their places.
 *
 * <p>All kits are first written beside their places. Then, one after another, the old kit is
 * renamed aside, the new one takes its place, files in the old one that are not the program's move
 * over, and the rest of the old one is deleted. When a step fails, those before it are undone: the
 * old kit stands as it was. When the program is killed, each kit is whole under one of its names,
 * and the next run puts it back.
 *
 * <p>Files that the program did not make are never deleted. They move over rather than stop the
 * work, since file managers and viewers leave files of their own in every folder they show, and a
 * maker's notes beside a template are where they belong.
 */
final class KitFolder {

  /** One writer at a time in this program; other programs are told apart by their number. */
  private static final Object ONE_AT_A_TIME = new Object();

  private final Path out;
  private final Disk disk;
  private final Leftovers leftovers;

  /**
   * A kit that is ready to be written.
   *
   * @param name of the plate, and of the folder
   * @param files its files
   */
  record Bundle(String name, List<KitFile> files) {
    KitNames names() {
      return new KitNames(name);
    }
  }

  KitFolder(Path out, Disk disk) {
    this.out = out;
    this.disk = disk;
    this.leftovers = new Leftovers(disk);
  }

  /**
   * Writes kits.
   *
   * @throws CannotWrite saying which path and why; kits that stood before it in the list may be new
   */
  void write(List<Bundle> bundles) throws CannotWrite {
    synchronized (ONE_AT_A_TIME) {
      OutFolder folder = OutFolder.ready(out, disk);
      boolean done = false;
      try {
        for (Bundle bundle : bundles) {
          settle(bundle);
          refuseWhatIsInTheWay(bundle);
        }
        stage(bundles);
        List<String> written = new ArrayList<>();
        for (Bundle bundle : bundles) {
          swap(bundle, written);
          written.add(bundle.name());
        }
        done = true;
      } finally {
        if (!done) {
          bundles.forEach(this::unstage);
          folder.giveUp();
        }
      }
    }
  }

  private Path place(Bundle bundle) throws CannotWrite {
    return OutFolder.resolve(out, bundle.name());
  }

  private void settle(Bundle bundle) throws CannotWrite {
    try {
      leftovers.settle(place(bundle), bundle.names());
    } catch (IOException failure) {
      throw OutFolder.failure(place(bundle), failure);
    }
  }

  private void refuseWhatIsInTheWay(Bundle bundle) throws CannotWrite {
    Path place = place(bundle);
    if (!Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (Files.isSymbolicLink(place)) {
      throw new CannotWrite(
          place.toString(),
          "is a link, which a kit neither follows nor replaces",
          "remove the link, or choose another folder with --out");
    }
    if (!Files.isDirectory(place)) {
      throw new CannotWrite(
          place.toString(),
          "is a file where the kit's folder belongs",
          "move it, or choose another folder with --out");
    }
    try {
      for (Path entry : Leftovers.list(place)) {
        boolean ours = bundle.names().owns(entry.getFileName().toString());
        if (ours && !Files.isRegularFile(entry, LinkOption.NOFOLLOW_LINKS)) {
          throw new CannotWrite(
              entry.toString(), "is a folder or link where a file of the kit belongs", "move it");
        }
      }
    } catch (IOException failure) {
      throw OutFolder.failure(place, failure);
    }
  }

  private void stage(List<Bundle> bundles) throws CannotWrite {
    for (Bundle bundle : bundles) {
      Path staged = Leftovers.staged(place(bundle));
      Path now = staged;
      try {
        disk.createFolder(staged);
        for (KitFile file : bundle.files()) {
          now = staged.resolve(file.name());
          disk.create(now, file.bytes());
        }
      } catch (IOException failure) {
        throw OutFolder.failure(now, failure);
      }
    }
  }

  private void unstage(Bundle bundle) {
    try {
      Path staged = Leftovers.staged(place(bundle));
      if (Files.isDirectory(staged, LinkOption.NOFOLLOW_LINKS)) {
        leftovers.discard(staged, bundle.names());
      }
    } catch (IOException | CannotWrite stays) {
      // The failure that led here is the one to tell; the next run clears this away.
    }
  }

  private void swap(Bundle bundle, List<String> written) throws CannotWrite {
    Path place = place(bundle);
    Path staged = Leftovers.staged(place);
    Path aside = Leftovers.aside(place);
    boolean replaces = Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS);
    List<Step> steps = new ArrayList<>();
    int done = 0;
    try {
      if (replaces) {
        steps.add(new Step(place, aside));
      }
      steps.add(new Step(staged, place));
      if (replaces) {
        for (Path name : foreign(place, bundle.names())) {
          steps.add(new Step(aside.resolve(name), place.resolve(name)));
        }
      }
      for (; done < steps.size(); done++) {
        steps.get(done).run(disk);
      }
    } catch (IOException failure) {
      for (int i = done - 1; i >= 0; i--) {
        undo(steps.get(i), failure, place, aside);
      }
      String before =
          written.isEmpty() ? "" : " (already written: " + String.join(", ", written) + ")";
      throw new CannotWrite(
          place.toString(),
          OutFolder.reason(failure) + before,
          replaces ? "the old kit is as it was" : "");
    }
    if (replaces) {
      try {
        leftovers.discard(aside, bundle.names());
      } catch (IOException stays) {
        // The new kit is whole and in its place; the next run clears this away.
        return;
      }
    }
  }

  private static List<Path> foreign(Path place, KitNames names) throws IOException {
    return Leftovers.list(place).stream()
        .map(Path::getFileName)
        .filter(name -> !names.owns(name.toString()))
        .toList();
  }

  private void undo(Step step, IOException failure, Path place, Path aside) throws CannotWrite {
    try {
      new Step(step.to(), step.from()).run(disk);
    } catch (IOException worse) {
      throw new CannotWrite(
          place.toString(),
          OutFolder.reason(failure) + ", and the old kit could not be put back",
          "it lies in " + aside + "; the next run of make puts it back");
    }
  }

  /** One renaming. */
  private record Step(Path from, Path to) {
    void run(Disk disk) throws IOException {
      disk.rename(from, to);
    }
  }
}
