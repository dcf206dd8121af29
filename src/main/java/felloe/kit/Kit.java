package felloe.kit;

import felloe.files.CannotWrite;
import felloe.files.Disk;
import felloe.files.FileSet;
import felloe.files.OutFile;
import felloe.files.SingleFile;
import felloe.files.Transaction;
import felloe.files.Written;
import felloe.load.DesignSpace;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.service.PlateLoads;
import felloe.service.Study;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Where a run reads from and writes to: a folder from which names start, and a disk. */
public final class Kit {

  private final Path folder;
  private final Disk disk;

  /**
   * A kit.
   *
   * @param folder where names of hub files that are asked for start from
   */
  public Kit(Path folder) {
    this(folder, Disk.REAL);
  }

  Kit(Path folder, Disk disk) {
    this.folder = folder;
    this.disk = disk;
  }

  /** The program's version, such as {@code 0.1.0}. */
  public static String version() {
    String version = Kit.class.getPackage().getImplementationVersion();
    return version == null ? "unreleased" : version;
  }

  /** Where names of files start from. */
  public Path folder() {
    return folder;
  }

  /** Sets of files that are written into a folder, whole or not at all; none yet. */
  public Transaction into(Path out) {
    return Transaction.into(out, disk);
  }

  /**
   * Writes a set of files of a plate, whole or not at all.
   *
   * @param out the folder in which each shape has a folder of its own
   * @param set what the set is called, such as {@code load}
   * @throws CannotWrite when the disk says no
   */
  public Written write(Path out, String set, Plate plate, List<OutFile> files) throws CannotWrite {
    FileSet all = KitNames.set(set, plate, files);
    return Transaction.into(out, disk).folder(plate.name(), all).commit();
  }

  /** The file in which a search keeps what it tried. */
  public DesignFile designs(Path out, Study study, PlateLoads.Request request, DesignSpace space) {
    return new DesignFile(out, disk, folder, study, request, space);
  }

  /**
   * Writes a text that the maker may edit into a file of its own, and never over one that is there.
   *
   * @param cure what to do where one is
   * @throws BadInput when one is there
   * @throws CannotWrite when the disk says no
   */
  public void writeNew(Path file, String text, String cure) throws CannotWrite {
    if (!single(file).create(text.getBytes(StandardCharsets.UTF_8))) {
      throw refused(file, "is there already", cure);
    }
  }

  /**
   * Refuses to go on where a file is there that would not be written over.
   *
   * @throws BadInput when one is there
   */
  public void refuseExisting(Path file, String cure) {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw refused(file, "is there already", cure);
    }
  }

  /**
   * Writes a text that the maker may edit, also over a file that is there.
   *
   * @throws BadInput when a folder is there
   * @throws CannotWrite when the disk says no
   */
  public void replace(Path file, String text) throws CannotWrite {
    single(file).replace(text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes a text that the maker may edit and a picture beside it, both or neither.
   *
   * @param over whether what is there may be written over
   * @param cure what to do where something is there
   * @throws BadInput when one is there, or a folder
   * @throws CannotWrite when the disk says no; then all is as it was
   */
  public void writeBoth(
      Path file, String text, Path beside, byte[] picture, boolean over, String cure)
      throws CannotWrite {
    if (!over) {
      refuseExisting(file, cure);
      refuseExisting(beside, cure);
    }
    single(file);
    SingleFile second = single(beside);
    Optional<byte[]> before = second.content();
    if (over) {
      second.replace(picture);
    } else if (!second.create(picture)) {
      throw refused(beside, "is there already", cure);
    }
    boolean done = false;
    try {
      if (over) {
        replace(file, text);
      } else {
        writeNew(file, text, cure);
      }
      done = true;
    } finally {
      if (!done) {
        second.putBack(before);
      }
    }
  }

  private SingleFile single(Path file) {
    if (file.getFileName() == null || Files.isDirectory(file)) {
      throw refused(file, "is a folder", "name a file in it");
    }
    return new SingleFile(file, disk);
  }

  private static BadInput refused(Path file, String wanted, String cure) {
    return new BadInput(new Problem(Place.ofFile(file.toString()), "", "", wanted, cure));
  }
}
